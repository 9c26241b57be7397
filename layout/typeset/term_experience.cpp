#include "layout/typeset/term_experience.h"

#include "core/base/in_words.h"
#include "layout/typeset/typesetter.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr Mm kOpeningPicture{124}; // at most
constexpr Mm kWallPhoto{190}; // at most
constexpr Mm kPanelSide{14}; // beside a panel that fills a page
constexpr Mm kPanelFoot{24};
constexpr Mm kHairline{0.2};

// The place of a panel in a room, as large as it goes, in the middle from side to side.
RectMm fitted(SizeMm panel, const RectMm& room)
{
    const double scale = std::min(room.width / panel.width, room.height / panel.height);
    const SizeMm size{panel.width * scale, panel.height * scale};
    return {room.x + (room.width - size.width) / 2, room.y, size.width, size.height};
}

// Paper on paper needs an edge.
void drawEdge(PageDrawing& page, const RectMm& panel, QRgb colour)
{
    const RectMm outside = panel.grown(kHairline);
    page.fill({outside.x, outside.y, outside.width, kHairline}, colour);
    page.fill({outside.x, panel.bottom(), outside.width, kHairline}, colour);
    page.fill({outside.x, outside.y, kHairline, outside.height}, colour);
    page.fill({panel.right(), outside.y, kHairline, outside.height}, colour);
}

WallText hungFor(Audience audience)
{
    switch (audience) {
    case Audience::Classroom:
        return WallText::HungClassroom;
    case Audience::Building:
        return WallText::HungBuilding;
    case Audience::Families:
        return WallText::HungFamilies;
    case Audience::Public:
        break;
    }
    return WallText::HungPublic;
}

WallText wordsFor(MeetingNoteKind kind)
{
    switch (kind) {
    case MeetingNoteKind::Agreement:
        return WallText::Agreed;
    case MeetingNoteKind::Disagreement:
        return WallText::NotAgreed;
    case MeetingNoteKind::ChangedMind:
        break;
    }
    return WallText::MindChanged;
}

} // namespace

ExperiencePages::ExperiencePages(const ClearedExperience& experience,
    const TermStyle& style,
    const StyleOfPanel& styleOf,
    const std::set<TermPart>& parts,
    PageFlow& flow)
    : m_experience(experience)
    , m_style(style)
    , m_styleOf(styleOf)
    , m_parts(parts)
    , m_flow(flow)
    , m_text(style, experience.language)
    , m_blocks(m_text, flow)
{
}

// A record is read in other years.
QString ExperiencePages::day(QDate day) const
{
    return dayOfRecord(day, m_experience.language);
}

void ExperiencePages::prose(WallText label, const QString& text)
{
    m_blocks.prose(say(label), text);
}

void ExperiencePages::heading(WallText text)
{
    m_blocks.heading(say(text), say(text));
}

void ExperiencePages::begin(TermPart part)
{
    m_flow.setRunning(m_experience.title, part);
}

void ExperiencePages::make()
{
    m_flow.breakPage();
    opening();
    for (const TermPart part : kTermParts) {
        if (m_parts.count(part) == 0)
            continue;
        begin(part);
        switch (part) {
        case TermPart::Opening:
            break;
        case TermPart::Walls:
            walls();
            break;
        case TermPart::Words:
            words();
            break;
        case TermPart::Meetings:
            meetings();
            break;
        case TermPart::Pictures:
            pictures();
            break;
        case TermPart::LookingBack:
            lookingBack();
            break;
        case TermPart::Heard:
            heard();
            break;
        }
    }
    m_flow.breakPage();
}

const ClearedPiece* ExperiencePages::dominantPicture() const
{
    const auto isWide = [](const ClearedPiece& piece) {
        return piece.picture && piece.kind == PieceKind::Photo && aspectOf(*piece.picture) > 1;
    };
    const auto& all = m_experience.pictures;
    const auto wide = std::find_if(all.begin(), all.end(), isWide);
    return wide == all.end() ? nullptr : &*wide;
}

void ExperiencePages::opening()
{
    begin(TermPart::Opening);
    m_blocks.title(m_experience.title, m_experience.title);
    if (m_experience.on)
        prose(WallText::When, day(*m_experience.on));
    prose(WallText::Where, m_experience.place);
    prose(WallText::With, m_experience.materials);
    prose(WallText::Aims, m_experience.goals);
    prose(WallText::WhatHappened, m_experience.context);
    if (const ClearedPiece* picture = dominantPicture())
        m_blocks.largePicture(*picture, kOpeningPicture);
    prose(WallText::Credits, m_experience.credits);
}

void ExperiencePages::walls()
{
    for (const ClearedWall& wall : m_experience.walls) {
        for (const ClearedPanel& panel : wall.panels)
            wallPage(wall, panel);
        wallPhotos(wall);
    }
}

// As it really hung: two to a page.
void ExperiencePages::wallPhotos(const ClearedWall& wall)
{
    if (wall.photos.empty())
        return;
    m_flow.breakPage();
    const QString heading = say(WallText::AsItHung).arg(wall.name);
    m_blocks.heading(heading, heading);
    for (const ClearedWallPhoto& photo : wall.photos) {
        if (photo.on)
            prose(WallText::Photographed, day(*photo.on));
        m_blocks.largePicture(photo.picture, kWallPhoto);
    }
    m_flow.breakPage();
}

void ExperiencePages::wallPage(const ClearedWall& wall, const ClearedPanel& panel)
{
    const bool turned = panel.size().width > panel.size().height;
    const SizeMm size = turned ? m_style.paper.transposed() : m_style.paper;
    PageDrawing page(size, m_text.language());
    const RectMm room{kPanelSide,
        m_style.top,
        size.width - 2 * kPanelSide,
        size.height - m_style.top - kPanelFoot};
    const RectMm place = fitted(panel.size(), room);
    QString name = wall.name;
    if (wall.panels.size() > 1)
        name = say(WallText::PanelOf)
                   .arg(wall.name,
                       QString::number(panel.number()),
                       QString::number(wall.panels.size()));
    const TextBlock label = m_text.label(name);
    const Mm baseline = m_style.top - Mm(5);
    page.text(page.add(Role::Heading2, m_text.language()),
        label,
        m_text.oneLine(label),
        {place.x, false, baseline, Mm(1)});
    const TextBlock measures =
        m_text.caption(say(hungFor(wall.audience))
                           .arg(panel.size().width.value(), 0, 'f', 0)
                           .arg(panel.size().height.value(), 0, 'f', 0)
                           .arg(100 * (place.width / panel.size().width), 0, 'f', 0),
            m_style.palette.adult);
    page.text(page.add(Role::Paragraph, m_text.language()),
        measures,
        m_text.oneLine(measures),
        {place.right(), true, baseline, Mm(1)});
    drawEdge(page, place, qRgb(0xC8, 0xCA, 0xCB));
    std::vector<Bookmark> marks;
    if (panel.number() == wall.panels.front().number())
        marks.push_back({1, say(WallText::OnTheWall).arg(wall.name), Mm()});
    m_flow.addPage(
        std::move(page), size, {{typeset(panel, m_styleOf(panel)), place}}, std::move(marks));
}

void ExperiencePages::words()
{
    if (!m_experience.answers.empty())
        heading(WallText::WhatTheySaid);
    for (const ClearedAnswers& answers : m_experience.answers) {
        m_blocks.question(answers.question);
        for (const ClearedPiece& piece : answers.words)
            m_blocks.saying(piece);
    }
    if (!m_experience.groups.empty()) {
        heading(WallText::BelongsTogether);
    }
    for (const ClearedGroup& group : m_experience.groups) {
        // A group whose label may not be read is one all the same.
        m_blocks.question(group.label.isEmpty() ? say(WallText::Together) : group.label);
        for (const ClearedPiece& piece : group.words)
            m_blocks.saying(piece);
    }
}

void ExperiencePages::meetings()
{
    for (const ClearedMeeting& meeting : m_experience.meetings) {
        const bool first = &meeting == &m_experience.meetings.front();
        if (first)
            heading(WallText::Meetings);
        m_blocks.question(day(meeting.on));
        prose(WallText::About, meeting.about.join(QStringLiteral("\n")));
        prose(WallText::Notes, meeting.notes);
        for (const ClearedPiece& piece : meeting.words)
            m_blocks.saying(piece);
        for (const ClearedHappening& one : meeting.happened)
            prose(wordsFor(one.kind), one.text);
    }
}

void ExperiencePages::pictures()
{
    // The first pages show it large already.
    std::vector<ClearedPiece> others;
    const ClearedPiece* shown = dominantPicture();
    for (const ClearedPiece& piece : m_experience.pictures) {
        if (&piece != shown)
            others.push_back(piece);
    }
    if (others.empty())
        return;
    heading(WallText::Pictures);
    m_blocks.pictures(others);
}

void ExperiencePages::lookingBack()
{
    const bool isEmpty = m_experience.interpretation.trimmed().isEmpty()
        && m_experience.nextSteps.trimmed().isEmpty() && m_experience.observations.empty()
        && m_experience.reflections.empty();
    if (isEmpty)
        return;
    heading(WallText::LookingBack);
    prose(WallText::WhatWeMakeOfIt, m_experience.interpretation);
    prose(WallText::Next, m_experience.nextSteps);
    for (const ClearedReflection& one : m_experience.reflections)
        m_blocks.prose(one.question, one.answer);
    for (const ClearedObservation& seen : m_experience.observations) {
        m_blocks.prose(seen.on ? day(*seen.on) : say(WallText::Seen), seen.words);
    }
}

void ExperiencePages::heard()
{
    if (m_experience.heard.empty())
        return;
    m_blocks.heading(say(WallText::WhoWasHeard), QString());
    m_blocks.heard(m_experience.questions, m_experience.heard);
}

} // namespace wainscot
