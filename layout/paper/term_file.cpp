#include "layout/paper/term_file.h"

#include "core/base/in_words.h"
#include "layout/paper/output_file.h"
#include "layout/paper/pdf_file.h"

namespace wainscot {

namespace {

// What the first time through all pages finds out: how many there are, where things begin, and how
// large every picture is at most.
struct Survey {
    std::vector<ContentsLine> lines;
    std::vector<std::vector<Bookmark>> bookmarks; // by page of the body
    pdf::PicturePlan plan;
    std::map<TermPart, int> pages;
    int body = 0;
};

void addPictures(pdf::PicturePlan& plan, const TermPage& page, DotsPerInch resolution)
{
    plan.add(page.list, resolution);
    for (const PanelOnPage& panel : page.panels) {
        const double scale = panel.place.width / panel.list.size.width;
        plan.add(panel.list, resolution * scale);
    }
}

Survey surveyed(const TermPages& pages, DotsPerInch resolution, const PaperWatch& watch)
{
    Survey survey;
    addPictures(survey.plan, pages.cover(), resolution);
    pages.makeBody([&](const TermPage& page) {
        if (watch.cancelled())
            throw pdf::WriteCancelled();
        for (const Bookmark& mark : page.bookmarks)
            survey.lines.push_back({mark.level, mark.title, page.label, survey.body});
        survey.bookmarks.push_back(page.bookmarks);
        addPictures(survey.plan, page, resolution);
        ++survey.pages[page.part];
        ++survey.body;
    });
    return survey;
}

TermStyle styleFor(const TermWishes& wishes)
{
    TermStyle style;
    style.paper = wishes.paper;
    return style;
}

// A picture could not be made: ends the walk through the pages.
class BakeFailed : public std::exception {
public:
    explicit BakeFailed(Error error)
        : m_error(std::move(error))
    {
    }
    [[nodiscard]] const Error& error() const { return m_error; }

private:
    Error m_error;
};

class TermWriter {
public:
    TermWriter(const QString& path,
        const Survey& survey,
        PictureSource& source,
        const PaperOptions& options,
        const PaperWatch& watch)
        : m_path(path)
        , m_survey(survey)
        , m_source(source)
        , m_options(options)
        , m_watch(watch)
        , m_spool(std::make_shared<pdf::Spool>(path))
        , m_file(options, survey.plan, m_spool)
    {
        QString why;
        if (!m_spool->open(why))
            throw pdf::WriteFailed(why.toStdString());
    }

    PaperReport write(const TermPages& pages)
    {
        const std::vector<TermPage> contents = pages.contents(m_survey.lines);
        m_front = 1 + static_cast<int>(contents.size());
        m_all = m_front + m_survey.body;
        m_file.labelFrom(0, "/P (Cover)");
        add(pages.cover(), m_file.addSection(m_options.language));
        m_file.labelFrom(1, "/S /r");
        const auto section = m_file.addSection(m_options.language);
        for (const TermPage& page : contents) {
            const int number = add(page, section);
            for (const Bookmark& mark : page.bookmarks)
                m_file.addOutline({mark.level, mark.title, number, mark.top});
            for (const PageLink& link : page.links)
                m_file.addLink({number, link.area, m_front + link.page});
        }
        m_file.labelFrom(m_front, "/S /D");
        pages.makeBody([this](const TermPage& page) { addBody(page); });
        return m_file.write(m_path, m_watch, true);
    }

    [[nodiscard]] int front() const { return m_front; }

private:
    void addBody(const TermPage& page)
    {
        for (const Bookmark& mark : page.bookmarks) {
            if (mark.level == 0)
                m_section = m_file.addSection(m_options.language);
        }
        const int number = add(page, m_section);
        for (const Bookmark& mark : page.bookmarks)
            m_file.addOutline({mark.level, mark.title, number, mark.top});
    }

    int add(const TermPage& page, pdf::StructureTree::Node section)
    {
        if (m_watch.cancelled())
            throw pdf::WriteCancelled();
        bake(page);
        const int number = m_file.addPage(page, section);
        if (m_watch.onProgress)
            m_watch.onProgress(number + 1, m_all);
        return number;
    }

    // The pictures that come up here for the first time.
    void bake(const TermPage& page)
    {
        std::vector<std::size_t> missing;
        const auto look = [&](const DisplayList& list) {
            for (const Mark& mark : list.marks) {
                const auto* placed = std::get_if<PlacedPicture>(&mark.shape);
                if (placed == nullptr)
                    continue;
                const auto index = static_cast<std::size_t>(m_survey.plan.indexOf(*placed));
                if (!m_file.hasPicture(index)
                    && std::find(missing.begin(), missing.end(), index) == missing.end())
                    missing.push_back(index);
            }
        };
        look(page.list);
        for (const PanelOnPage& panel : page.panels)
            look(panel.list);
        std::vector<pdf::PlannedPicture> wanted;
        wanted.reserve(missing.size());
        for (const std::size_t index : missing)
            wanted.push_back(m_survey.plan.pictures()[index]);
        PaperWatch quiet;
        quiet.cancel = m_watch.cancel;
        const auto baked =
            pdf::bakeAll(wanted, m_source, m_options.workers, m_path, *m_spool, quiet);
        if (!baked)
            throw BakeFailed(baked.error());
        for (std::size_t i = 0; i < missing.size(); ++i)
            m_file.setPicture(missing[i], (*baked)[i]);
    }

    QString m_path;
    const Survey& m_survey;
    PictureSource& m_source;
    const PaperOptions& m_options;
    const PaperWatch& m_watch;
    std::shared_ptr<pdf::Spool> m_spool;
    pdf::PdfFile m_file;
    pdf::StructureTree::Node m_section = pdf::StructureTree::kRoot;
    int m_front = 0;
    int m_all = 0;
};

} // namespace

TermReport planTerm(const ClearedTerm& term, const TermWishes& wishes)
{
    const TermPages pages(term, styleFor(wishes), wishes.styleOf, wishes.parts);
    const Survey survey = surveyed(pages, DotsPerInch(1), {});
    TermReport report;
    report.front = 1 + static_cast<int>(pages.contents(survey.lines).size());
    report.pages = survey.pages;
    report.paper.pages = report.front + survey.body;
    return report;
}

Result<TermReport> writeTerm(const QString& path,
    const ClearedTerm& term,
    const TermWishes& wishes,
    PictureSource& pictures,
    const PaperOptions& options,
    const PaperWatch& watch)
{
    if (term.experiences().empty())
        return Error{ErrorCode::WrongUse,
            path,
            QStringLiteral("nothing in the book has a day between %1 and %2")
                .arg(term.from().toString(Qt::ISODate), term.to().toString(Qt::ISODate))};
    TermReport report;
    const Result<PaperReport> written = pdf::caught(path, [&]() -> Result<PaperReport> {
        try {
            const TermPages pages(term, styleFor(wishes), wishes.styleOf, wishes.parts);
            const Survey survey = surveyed(pages, options.maxResolution, watch);
            PaperOptions complete = options;
            if (complete.title.isEmpty())
                complete.title = QStringLiteral("%1, %2").arg(
                    term.title(), daysOfTerm(term.from(), term.to(), term.language()));
            if (complete.language.isEmpty())
                complete.language = term.language();
            TermWriter writer(path, survey, pictures, complete, watch);
            const PaperReport paper = writer.write(pages);
            report.pages = survey.pages;
            report.front = writer.front();
            return paper;
        } catch (const BakeFailed& failure) {
            return failure.error();
        }
    });
    if (!written)
        return written.error();
    report.paper = *written;
    return report;
}

} // namespace wainscot
