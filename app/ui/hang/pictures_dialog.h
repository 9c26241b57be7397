// Pictures out of the book: of what, how large, in which form.
#pragma once

#include <QDialog>
#include <QRadioButton>
#include <QSpinBox>

#include "app/jobs/export_job.h"
#include "app/ui/kit/surfaces.h"

class QVBoxLayout;

namespace wainscot::ui {

class PicturesDialog : public QDialog {
    Q_OBJECT
public:
    // `piece`: the one in the hand, and how it is called; invalid = none is.
    PicturesDialog(PieceId piece, const QString& called, QWidget* parent = nullptr);

    // What is wanted, without display, file and folder.
    [[nodiscard]] ExportPictureJob job() const;
    [[nodiscard]] QRadioButton& ofPanels() { return *m_panels; }
    [[nodiscard]] QRadioButton& ofPiece() { return *m_alone; }
    [[nodiscard]] QRadioButton& jpeg() { return *m_jpeg; }
    [[nodiscard]] QSpinBox& width() { return *m_width; }

private:
    void addSizes(QVBoxLayout& column);
    void addForms(QVBoxLayout& column);

    PieceId m_piece;
    QRadioButton* m_panels;
    QRadioButton* m_alone;
    QRadioButton* m_png;
    QRadioButton* m_jpeg;
    QSpinBox* m_width;
};

} // namespace wainscot::ui
