// What a place shows: one page of several, new content in a page.
#pragma once

#include <QScrollArea>
#include <QStackedWidget>

namespace wainscot::ui {

// A stack takes the least size of all its pages; one that is not shown here forces none on it.
inline void showOnly(QStackedWidget& pages, int at)
{
    for (int i = 0; i < pages.count(); ++i) {
        const auto policy = i == at ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        pages.widget(i)->setSizePolicy(policy, policy);
    }
    pages.setCurrentIndex(at);
}

// What was there goes when nothing uses it any more: one of its buttons may be the sender.
inline void replaceContent(QScrollArea& area, QWidget* content)
{
    if (QWidget* before = area.takeWidget()) {
        before->hide();
        before->deleteLater();
    }
    area.setWidget(content);
    content->setAutoFillBackground(false);
}

} // namespace wainscot::ui
