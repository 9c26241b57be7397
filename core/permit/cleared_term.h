// A stretch of days as one audience may see it now: what goes into the file to keep. Permissions
// are asked again as they stand, also for what hung before.
#pragma once

#include "core/permit/cleared.h"

#include <QDate>

#include <set>
#include <vector>

namespace wainscot {

// The words of children in the record are cleared pieces of kind Quote, pictures are pieces of
// kind Photo or Work.
struct ClearedAnswers {
    QString question;
    std::vector<ClearedPiece> words;
};

struct ClearedGroup {
    QString label; // empty = it may not be read
    std::vector<ClearedPiece> words;
};

// Something that happened with an idea: agreed on, not agreed on, a mind changed.
struct ClearedHappening {
    MeetingNoteKind kind = MeetingNoteKind::Agreement;
    QString text;
};

struct ClearedMeeting {
    QDate on;
    QString notes;
    QStringList about; // labels of the groups it gave back
    std::vector<ClearedPiece> words; // read out or said in it
    std::vector<ClearedHappening> happened; // in the order noted
};

struct ClearedReflection {
    QString question;
    QString answer;
};

struct ClearedObservation {
    std::optional<QDate> on;
    QString words;
};

// Whether a child has been heard, once for each question or experience: marks, never sums.
struct HeardRow {
    QString child; // empty = may not be named
    std::vector<bool> heard;
};

// A display photographed where it really hung.
struct ClearedWallPhoto {
    std::optional<QDate> on;
    ClearedPiece picture;
};

struct ClearedWall {
    QString name;
    Audience audience = Audience::Classroom; // who stood in front of it
    std::vector<ClearedPanel> panels; // as the audience of the term may see them
    std::vector<ClearedWallPhoto> photos; // by day
};

struct ClearedExperience {
    QString title;
    QString language; // of the adult's texts, BCP 47
    std::optional<QDate> on;
    QString place;
    QString materials;
    QString goals;
    QString context;
    QString interpretation;
    QString nextSteps;
    QString credits;
    std::vector<ClearedWall> walls;
    std::vector<ClearedAnswers> answers; // by question, in the order they are asked
    std::vector<ClearedGroup> groups;
    std::vector<ClearedMeeting> meetings; // by day
    std::vector<ClearedReflection> reflections;
    std::vector<ClearedObservation> observations; // by day
    std::vector<ClearedPiece> pictures;
    QStringList questions; // the columns of `heard`
    std::vector<HeardRow> heard; // in the order of the class; who is not named comes last
};

// By numbers of the book.
struct TermContents {
    std::set<DisplayId> displays;
    std::set<ExperienceId> experiences;
    std::set<QuoteId> words;
    std::set<PictureId> pictures;
    std::set<ChildId> named;
};

// Only permission rules can build one; the writer of the term's file takes nothing else.
class ClearedTerm {
public:
    // What has a day outside `from` to `to` stays out, with everything of an experience of such a
    // day. Ages are told for the day of the experience, or `today` where it has none.
    // REQUIRES: from <= to
    static ClearedTerm of(const Book& book, Audience audience, QDate from, QDate to, QDate today);

    [[nodiscard]] const QString& title() const { return m_title; } // of the book
    [[nodiscard]] const QString& language() const { return m_language; }
    [[nodiscard]] Audience audience() const { return m_audience; }
    [[nodiscard]] QDate from() const { return m_from; }
    [[nodiscard]] QDate to() const { return m_to; }
    [[nodiscard]] QDate madeOn() const { return m_madeOn; }
    // By day.
    [[nodiscard]] const std::vector<ClearedExperience>& experiences() const
    {
        return m_experiences;
    }
    // By experience; nothing while there is only one.
    [[nodiscard]] const std::vector<HeardRow>& heard() const { return m_heard; }
    [[nodiscard]] const std::vector<LeftOut>& leftOut() const { return m_leftOut; }
    // Whose words and which pictures are anywhere in it, its walls included; who may be named.
    [[nodiscard]] const TermContents& contents() const { return m_contents; }

private:
    friend class TermClearing;
    ClearedTerm() = default;
    QString m_title;
    QString m_language;
    Audience m_audience = Audience::Classroom;
    QDate m_from;
    QDate m_to;
    QDate m_madeOn;
    std::vector<ClearedExperience> m_experiences;
    std::vector<HeardRow> m_heard;
    std::vector<LeftOut> m_leftOut;
    TermContents m_contents;
};

} // namespace wainscot
