// Writing on the panel itself: the caret stands in the lines that will be on paper, and a small
// card below tells how the text reads.
#pragma once

#include <QTimer>

#include <memory>
#include <set>

#include "app/ui/kit/surfaces.h"
#include "app/ui/writing/caret_field.h"
#include "app/ui/writing/spelling.h"
#include "app/ui/writing/word_offer.h"
#include "core/model/display.h"

namespace wainscot::ui {

class WordsEditor : public Card {
    Q_OBJECT
public:
    // The caret stands in `parent`, over the panel.
    explicit WordsEditor(QWidget* parent = nullptr);
    // `language` of the text, BCP 47: the reading level is told for English only.
    // `own`: the children's names and other words that are right here, folded.
    void begin(const Piece& piece,
        const QString& text,
        const QString& name,
        const QString& language,
        std::set<QString> own);
    [[nodiscard]] PieceId piece() const { return m_piece.id; }
    [[nodiscard]] bool isOfAChild() const { return m_piece.kind == PieceKind::Quote; }
    [[nodiscard]] QString text() const;
    [[nodiscard]] CaretField& field() { return *m_field; }
    // After the panel drew the text, or its view changed. The caret is `emptyHeight` high where
    // there are no words yet.
    void showLines(const DisplayList& list, const ViewMap& view, Mm emptyHeight);
    void place(const QRectF& piece, const QRect& room); // the card; px of the parent
    void raiseBoth();

Q_SIGNALS:
    void written(const QString& text); // as it is shown, at every key
    void finished();
    void putBack();
    void cardChanged(); // it is higher or lower than before

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void tellReading();
    void markDoubts();
    void offerWord();
    void replaceDoubt(const QString& word);
    bool keyPressed(const QKeyEvent& key);

    CaretField* m_field;
    Label* m_reading;
    Label* m_hint;
    WordOffer* m_offer;
    std::shared_ptr<Spelling> m_spelling; // null for a child's words and where none is installed
    std::set<QString> m_own;
    std::vector<TextRange> m_doubts;
    TextRange m_offered;
    QTimer m_rest; // suggestions take time: they wait until the hand does
    QString m_language;
    Piece m_piece; // as it is while the writing begins
    bool m_beginning = false;
};

} // namespace wainscot::ui
