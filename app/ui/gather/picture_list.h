// The pictures of an experience as a list: a small copy, who is in it or that nobody has looked.
#pragma once

#include <QListWidget>

#include "app/ui/canvas/picture_shelf.h"
#include "core/model/book.h"

namespace wainscot::ui {

class PictureList : public QListWidget {
    Q_OBJECT
public:
    explicit PictureList(PictureShelf& shelf, QWidget* parent = nullptr);
    void refresh(
        const Book& book, const std::vector<const Picture*>& pictures, PictureId chosenOne);
    [[nodiscard]] PictureId current() const;

Q_SIGNALS:
    void chosen(wainscot::PictureId picture);

private:
    void showThumbnail(QListWidgetItem& item, const Picture& picture);
    PictureShelf& m_shelf;
    std::vector<PictureId> m_shown;
    bool m_refreshing = false;
};

// "Wren, Kofi", "nobody to recognise", "not looked at yet"
[[nodiscard]] QString whoIsIn(const Book& book, const Picture& picture);

} // namespace wainscot::ui
