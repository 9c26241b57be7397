// One picture of the book, chosen from a list.
#pragma once

#include <QDialog>

#include "app/ui/gather/picture_list.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/session.h"

namespace wainscot::ui {

class PictureChoice : public QDialog {
    Q_OBJECT
public:
    // Pictures of the experience one is in; all of the book while it has none.
    PictureChoice(Session& session, PictureShelf& shelf, QWidget* parent = nullptr);
    void setHint(const QString& hint);
    void setNone(const QString& text); // what the button says that chooses no picture
    [[nodiscard]] PictureId picture() const { return m_picture; } // invalid = none
    [[nodiscard]] PictureList& list() { return *m_list; }
    [[nodiscard]] Button& take() { return *m_take; }

private:
    std::vector<const Picture*> m_pictures;
    PictureId m_picture;
    Label* m_hint;
    PictureList* m_list;
    Button* m_none;
    Button* m_take;
};

} // namespace wainscot::ui
