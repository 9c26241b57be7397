#include "app/ui/writing/words_editor.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>

#include "app/ui/kit/tokens.h"
#include "app/ui/writing/reading_line.h"

namespace wainscot::ui {

namespace {

constexpr int kRestMs = 350;

bool isOneParagraph(PieceKind kind)
{
    return isPicture(kind) || kind == PieceKind::Title || kind == PieceKind::Label;
}

} // namespace

WordsEditor::WordsEditor(QWidget* parent)
    : Card(Tone::Field, parent)
    , m_field(new CaretField(parent))
    , m_reading(new Label({}, 0.85, QFont::Normal, true))
    , m_hint(new Label({}, 0.85, QFont::Normal, true))
    , m_offer(new WordOffer)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(air(2), air(1), air(2), air(1));
    column->setSpacing(0);
    m_reading->setObjectName(QStringLiteral("reading"));
    m_reading->setToolTip(readingLimits());
    column->addWidget(m_reading);
    column->addWidget(m_hint);
    column->addWidget(m_offer);
    m_field->installEventFilter(this);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &WordsEditor::offerWord);
    connect(m_field, &QPlainTextEdit::cursorPositionChanged, this, &WordsEditor::markDoubts);
    connect(m_offer, &WordOffer::chosen, this, &WordsEditor::replaceDoubt);
    connect(m_offer, &WordOffer::kept, this, [this] {
        const QString word = text().mid(m_offered.start, m_offered.length);
        keepOwnWord(word);
        m_own.insert(foldedWord(word));
        markDoubts();
    });
    connect(m_field, &CaretField::shownTextChanged, this, [this] {
        tellReading();
        markDoubts();
        if (!m_beginning)
            Q_EMIT written(m_field->shownText());
    });
    hide();
}

void WordsEditor::begin(const Piece& piece,
    const QString& text,
    const QString& name,
    const QString& language,
    std::set<QString> own)
{
    m_piece = piece;
    m_language = language;
    m_own = std::move(own);
    m_own.merge(ownWords());
    m_spelling = isOfAChild() ? nullptr : Spelling::of(language);
    m_offer->hide();
    m_beginning = true;
    m_field->begin(text, isOneParagraph(piece.kind));
    m_beginning = false;
    tellReading(); // the text may be the one that stood here before
    markDoubts();
    m_field->setAccessibleName(tr("Write: %1").arg(name));
    m_hint->setText(isOfAChild()
            ? tr("Missing words leave an ellipsis, yours stand in [brackets]. Enter: done.")
            : tr("Enter: done. Esc: as it was."));
    m_reading->setVisible(!isOfAChild()); // a child's words are not measured
    show();
    m_field->show();
    raiseBoth();
    m_field->setFocus();
}

void WordsEditor::hideEvent(QHideEvent* event)
{
    Card::hideEvent(event);
    m_field->hide();
}

void WordsEditor::tellReading()
{
    m_reading->setText(readingLine(text(), m_language, !m_field->isOneParagraph()));
}

// The word that is being written is not marked before it is finished.
void WordsEditor::markDoubts()
{
    if (m_beginning)
        return;
    m_doubts = m_spelling && !m_field->isComposing() ? m_spelling->doubtful(text(), m_own)
                                                     : std::vector<TextRange>();
    const int caret = m_field->textCursor().position();
    std::vector<TextRange> marked = m_doubts;
    std::erase_if(
        marked, [&](const TextRange& doubt) { return doubt.start + doubt.length == caret; });
    m_field->setDoubtful(std::move(marked));
    if (m_doubts.empty())
        m_offer->hide();
    m_rest.start();
}

// Of the word the caret is in, or else the next one.
void WordsEditor::offerWord()
{
    if (m_doubts.empty() || !isVisible())
        return;
    const int caret = m_field->textCursor().position();
    auto at = std::find_if(m_doubts.begin(), m_doubts.end(), [&](const TextRange& doubt) {
        return caret <= doubt.start + doubt.length;
    });
    m_offered = at == m_doubts.end() ? m_doubts.front() : *at;
    const QString word = text().mid(m_offered.start, m_offered.length);
    m_offer->offer(word, m_spelling->suggestions(word, 3));
    Q_EMIT cardChanged();
}

void WordsEditor::replaceDoubt(const QString& word)
{
    QTextCursor cursor = m_field->textCursor();
    cursor.setPosition(m_offered.start);
    cursor.setPosition(m_offered.start + m_offered.length, QTextCursor::KeepAnchor);
    cursor.insertText(word);
    m_field->setTextCursor(cursor);
}

QString WordsEditor::text() const
{
    return m_field->toPlainText();
}

void WordsEditor::showLines(const DisplayList& list, const ViewMap& view, Mm emptyHeight)
{
    m_field->setLines(
        CaretMap(list, m_piece, m_field->shownText(), emptyHeight), view, view.toPx(m_piece.cell));
}

void WordsEditor::place(const QRectF& piece, const QRect& room)
{
    const QRect words = m_field->geometry() | piece.toAlignedRect();
    const int width = qBound(scaled(330), int(piece.width()), scaled(460));
    const int height =
        layout()->heightForWidth(width) > 0 ? layout()->heightForWidth(width) : sizeHint().height();
    int top = words.bottom() + air(2);
    if (top + height > room.bottom())
        top = qMax(room.top(), words.top() - height - air(2));
    const int left =
        qBound(room.left(), int(piece.left()), qMax(room.left(), room.right() - width));
    setGeometry(left, top, width, height);
}

void WordsEditor::raiseBoth()
{
    m_field->raise();
    raise();
}

bool WordsEditor::keyPressed(const QKeyEvent& key)
{
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    if (m_offer->takeKey(key))
        return true;
    if (key.key() == Qt::Key_Escape) {
        Q_EMIT putBack();
        return true;
    }
    // Shift+Enter begins a new paragraph where the piece may have several.
    if (enter && (m_field->isOneParagraph() || !key.modifiers().testFlag(Qt::ShiftModifier))) {
        Q_EMIT finished();
        return true;
    }
    return false;
}

bool WordsEditor::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_field)
        return Card::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (isVisible() && reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason)
            Q_EMIT finished();
        return false;
    }
    return event->type() == QEvent::KeyPress && !m_field->isComposing()
        && keyPressed(*static_cast<QKeyEvent*>(event));
}

} // namespace wainscot::ui
