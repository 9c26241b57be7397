// Panels in parts straight to a printer, as the sheets of layout/paper would be.
#pragma once

#include "app/jobs/drawn_display.h"
#include "app/jobs/export_job.h"
#include "app/ui/session/session.h"
#include "layout/screen/painter.h"

class QPrinter;

namespace wainscot::ui {

// Pictures for the printer: baked from the original at the size they are printed.
class PrintedPictures final : public PictureProvider {
public:
    explicit PrintedPictures(Session& session)
        : m_session(session)
    {
    }
    [[nodiscard]] ProvidedPicture picture(const ClearedPicture& picture, SizePx wanted) override;

private:
    Session& m_session;
};

// The paper, the way round that needs fewer sheets.
void setSheetPaper(QPrinter& printer, SizeMm panel, const SheetWishes& wishes);
// For every panel the sheet that shows how the others join, with the ruler, and its sheets; or
// those of them the printer was asked for (fromPage, toPage). False when the printer does not
// answer.
[[nodiscard]] bool printSheets(QPrinter& printer,
    const DrawnDisplay& drawn,
    const SheetWishes& wishes,
    PictureProvider& pictures);

} // namespace wainscot::ui
