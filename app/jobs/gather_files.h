// Taking in single pictures: dropped on the window, or the sheet a child answered on.
#pragma once

#include "app/jobs/gather.h"
#include "core/media/scan.h"

#include <QStringList>

namespace wainscot {

struct GatheredFiles {
    GatherOutcome outcome;
    // Of the files taken, also of those that were there before; of a scanned PDF all its pages.
    std::vector<PictureId> pictures;
    std::vector<PictureId> firsts; // one for each file: of a PDF its first page with anything on it
};

// A picture the experience has already (same bytes) is not taken twice and stays as it is. Every
// page of a scanned PDF is a picture. A file or page that cannot be used is left out with its
// reason. Originals are copied into the book and never changed. NotFound: no such experience, or
// the display belongs to none.
struct GatherFilesJob {
    QStringList files;
    ExperienceId experience;
    QString picturesFolder; // of the book
    PictureKind kind = PictureKind::Photo;
    DisplayId ofWall{}; // they are photos of this display as it hung; it says the experience
    std::optional<QDate> on{}; // it hung so; nothing = the day the camera says, else today
    bool panelsLegible = true; // of photos of a wall
    People people; // of every new one; nobody has looked unless it says so
    // More pages than that in one PDF are refused. 1 where what is said of `people` would be false
    // of the other pages of a pile.
    int mostPages = kMostScanPages;
    Result<GatheredFiles> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
