#include "app/jobs/draft_pieces.h"
#include "app/jobs/sentences.h"
#include "core/base/in_words.h"
#include "core/base/wall_text.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace wainscot {

namespace {

constexpr std::size_t kMostMeetings = 4;
constexpr std::size_t kMostQuotes = 2; // of a meeting
constexpr int kMostNoteWords = 20;

// Two of the most starred, in the order they were told.
void keepTheBest(std::vector<const Quote*>& quotes)
{
    std::stable_sort(quotes.begin(), quotes.end(), [](const Quote* a, const Quote* b) {
        return a->stars > b->stars;
    });
    if (quotes.size() > kMostQuotes)
        quotes.resize(kMostQuotes);
    std::sort(
        quotes.begin(), quotes.end(), [](const Quote* a, const Quote* b) { return a->id < b->id; });
}

class ThreadDraft {
public:
    ThreadDraft(const Material& material, std::vector<ThreadMeeting> meetings)
        : m_material(material)
        , m_meetings(std::move(meetings))
    {
    }

    PanelDraft draft()
    {
        const Experience& told = m_material.experience;
        m_draft.pieces.push_back(textPiece(PieceKind::Title, told.title));
        m_draft.pieces.push_back(textPiece(PieceKind::Context, contextLine()));
        std::vector<const Quote*> all;
        for (const ThreadMeeting& meeting : m_meetings)
            all.insert(all.end(), meeting.quotes.begin(), meeting.quotes.end());
        const QString credits = creditsLine(m_material, all);
        if (!credits.isEmpty())
            m_draft.pieces.push_back(textPiece(PieceKind::Credits, credits));
        for (std::size_t at = 0; at < m_meetings.size(); ++at)
            addMeeting(at);
        if (!told.interpretation.isEmpty())
            m_draft.pieces.push_back(interpretationPiece(m_material));
        return std::move(m_draft);
    }

private:
    [[nodiscard]] QString countInWords(std::size_t count) const
    {
        const QStringList words =
            wallText(WallText::NumbersInWords, m_material.language()).split(QLatin1Char(' '));
        const auto at = static_cast<qsizetype>(count);
        return at < words.size() ? words[at] : QString::number(count);
    }

    QString contextLine() const
    {
        if (!m_material.experience.context.isEmpty())
            return m_material.experience.context;
        std::set<ChildId> children;
        for (const ThreadMeeting& meeting : m_meetings) {
            for (const Quote* quote : meeting.quotes)
                children.insert(quote->child);
        }
        const QString meetings = capitalised(countInWords(m_meetings.size()));
        if (children.size() == 1)
            return wallText(WallText::MeetingsAndOneChild, m_material.language()).arg(meetings);
        return wallText(WallText::MeetingsAndChildren, m_material.language())
            .arg(meetings, countInWords(children.size()));
    }

    void addMeeting(std::size_t at)
    {
        const ThreadMeeting& meeting = m_meetings[at];
        const int group = static_cast<int>(at) + 1;
        const bool last = at + 1 == m_meetings.size();
        if (const Picture* picture = pictureOf(meeting, last)) {
            m_used.insert(picture->id);
            m_draft.pieces.push_back(picturePiece(*picture, group, last));
            m_draft.pieces.back().text.clear(); // the day below says what a caption would
        }
        m_draft.pieces.push_back(
            textPiece(PieceKind::Label, dayInWords(meeting.on, m_material.language())));
        m_draft.pieces.back().group = group;
        const auto words = meeting.notes.split(QLatin1Char(' '), Qt::SkipEmptyParts).size();
        if (words > 0 && words <= kMostNoteWords) {
            m_draft.pieces.push_back(textPiece(PieceKind::Context, meeting.notes));
            m_draft.pieces.back().group = group;
        }
        for (const Quote* quote : meeting.quotes)
            m_draft.pieces.push_back(quotePiece(*quote, group));
    }

    [[nodiscard]] bool madeBySpeaker(const Picture& picture, const ThreadMeeting& meeting) const
    {
        return std::any_of(meeting.quotes.begin(), meeting.quotes.end(), [&](const Quote* quote) {
            const auto& who = picture.people.children;
            return std::find(who.begin(), who.end(), quote->child) != who.end();
        });
    }

    // The last meeting's picture leads the panel, so it is a photo; earlier ones may be drawings by
    // those who speak.
    [[nodiscard]] const Picture* pictureOf(const ThreadMeeting& meeting, bool last) const
    {
        const Picture* best = nullptr;
        const auto cost = [&](const Picture* picture) {
            const bool work = picture->kind == PictureKind::Work;
            const auto day = m_material.dayOf(*picture);
            const bool other = day && *day != meeting.on;
            const bool strange = work && !madeBySpeaker(*picture, meeting);
            return std::tuple(last && work, other || strange, !work && !day, -picture->stars);
        };
        for (const auto* list : {&m_material.works, &m_material.photos}) {
            for (const Picture* picture : *list) {
                const auto day = m_material.dayOf(*picture);
                const bool fits = picture->kind == PictureKind::Work ? !day || *day == meeting.on
                                                                     : day && *day == meeting.on;
                if (m_used.count(picture->id) == 0 && fits
                    && (best == nullptr || cost(picture) < cost(best)))
                    best = picture;
            }
        }
        const bool strange =
            best != nullptr && best->kind == PictureKind::Work && !madeBySpeaker(*best, meeting);
        return strange ? nullptr : best;
    }

    const Material& m_material;
    std::vector<ThreadMeeting> m_meetings;
    PanelDraft m_draft;
    std::set<PictureId> m_used;
};

} // namespace

std::vector<ThreadMeeting> threadMeetings(const Material& material)
{
    std::map<QDate, ThreadMeeting> byDay;
    for (const auto& [id, meeting] : material.book->meetings.rows()) {
        if (meeting.experience != material.experience.id)
            continue;
        ThreadMeeting& one = byDay[meeting.on];
        one.on = meeting.on;
        one.notes = meeting.notes.simplified();
        for (const Quote* quote : material.quotes) {
            if (quote->meeting == meeting.id)
                one.quotes.push_back(quote);
        }
    }
    std::vector<ThreadMeeting> meetings;
    for (auto& [day, meeting] : byDay) {
        if (!meeting.quotes.empty())
            meetings.push_back(std::move(meeting));
    }
    return meetings;
}

PanelDraft draftThread(const Material& material)
{
    std::vector<ThreadMeeting> meetings = threadMeetings(material);
    if (meetings.size() < 2) {
        std::map<QDate, ThreadMeeting> days;
        for (const Quote* quote : material.quotes) {
            if (const auto day = material.dayOf(*quote)) {
                days[*day].on = *day;
                days[*day].quotes.push_back(quote);
            }
        }
        meetings.clear();
        for (auto& [day, meeting] : days)
            meetings.push_back(std::move(meeting));
    }
    // Where there are more, the beginning and the end stay.
    while (meetings.size() > kMostMeetings)
        meetings.erase(meetings.begin() + static_cast<std::ptrdiff_t>(meetings.size() / 2));
    for (ThreadMeeting& meeting : meetings)
        keepTheBest(meeting.quotes);
    return ThreadDraft(material, std::move(meetings)).draft();
}

} // namespace wainscot
