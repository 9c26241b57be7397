// Every button of the window, in its six forms.
#pragma once

#include <QAbstractButton>

#include "app/ui/kit/icons.h"

namespace wainscot::ui {

class Button : public QAbstractButton {
    Q_OBJECT
public:
    enum class Form {
        Main, // the one filled button: the next step
        Plain, // with a border
        Word, // text alone
        Chip, // a condition that is on or off; its nail shows which
        Row, // a line of a list of actions, as wide as the list
        Task, // one of a few, underlined when chosen
    };
    explicit Button(
        Form form, const QString& text, Icon icon = Icon::None, QWidget* parent = nullptr);

    // A second, quieter line under the text; read as the description.
    void setDetail(const QString& detail);
    [[nodiscard]] const QString& detail() const { return m_detail; }
    void setKeyHint(const QString& key); // shown at the end: "F9"
    void setRelativeSize(double relative);
    void setQuiet(bool quiet); // second-text colour
    void setOpensList(bool opens); // shows an arrow
    // Shows the icon alone; the words stay as tooltip and name.
    void setWordless(bool wordless);
    void setMayShrink(bool may); // the text is shortened instead of forcing the width

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] int padding() const;
    [[nodiscard]] QFont textFont() const;
    [[nodiscard]] QFont detailFont() const;
    [[nodiscard]] QString shownText() const;
    [[nodiscard]] QRect visual(const QRect& logical) const;
    void paintGround(QPainter& painter) const;
    void paintIcon(QPainter& painter, int& start) const;
    void paintEnd(QPainter& painter, int& end) const;
    void paintText(QPainter& painter, const QRect& place) const;

    Form m_form;
    Icon m_icon;
    QString m_detail;
    QString m_key;
    double m_relative = 1.0;
    bool m_quiet = false;
    bool m_opensList = false;
    bool m_wordless = false;
    bool m_mayShrink = false;
};

} // namespace wainscot::ui
