// A class that watched a puddle for some days, and a display of it.
#pragma once

#include "app/jobs/arrange_job.h"
#include "app/jobs/sentences.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

#include <vector>

namespace wainscot {

inline const QString kPuddleTitle = QStringLiteral("Where does the puddle go?");

struct Puddle : ClassBook {
    Puddle()
    {
        Experience told = *book.experiences.find(experience);
        told.title = kPuddleTitle;
        told.on = QDate(2025, 11, 3);
        told.context = QStringLiteral("It rained until ten. We had one rule: no stamping.");
        told.interpretation = QStringLiteral("The line was their own idea.");
        told.nextSteps = QStringLiteral("Two jars, one with a lid.");
        PromptSet prompts = defaultPromptSet();
        prompts.id = book.promptSets.newId();
        book.promptSets.put(prompts);
        told.promptSet = prompts.id;
        book.experiences.put(told);
    }

    QuoteId said(ChildId who, int day, const char* words, int stars = 0)
    {
        const QuoteId id = quote(who, QString::fromUtf8(words));
        Quote value = *book.quotes.find(id);
        value.on = QDate(2025, 11, day);
        value.prompt = QStringLiteral("think");
        value.stars = stars;
        book.quotes.put(value);
        return id;
    }

    PictureId took(int day, std::vector<ChildId> who = {})
    {
        const QByteArray name = "IMG_" + QByteArray::number(int(book.pictures.size()) + 1) + ".jpg";
        const PictureId id = picture(PictureKind::Photo, {true, std::move(who)}, name.constData());
        Picture value = *book.pictures.find(id);
        value.size = {4000, 2667};
        value.caption = QStringLiteral("The line on that day.");
        value.captured = CaptureTime{QDateTime(QDate(2025, 11, day), QTime(10, 0)), std::nullopt};
        book.pictures.put(value);
        return id;
    }

    ArrangeOutcome arranged(const ArrangeJob& job)
    {
        const auto outcome = job.run(book, runOf());
        EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? ""
                                                   : sentenceFor(outcome.error()).toStdString());
        if (!outcome || !std::holds_alternative<ArrangeOutcome>(*outcome)) {
            ADD_FAILURE() << "no arrangement";
            return {};
        }
        return std::get<ArrangeOutcome>(*outcome);
    }

    static JobRun runOf()
    {
        JobRun run;
        run.today = kTestDay;
        return run;
    }
};

[[nodiscard]] ArrangeJob hallway();

// Four children, six tellings and five photos on four days.
[[nodiscard]] Puddle fourDays();

// A display arranged once, and its pieces by what they show.
struct Hung {
    explicit Hung(int panels = 1)
        : Hung(fourDays(), panels)
    {
    }
    Hung(Puddle of, int panels)
        : puddle(std::move(of))
    {
        job = hallway();
        job.panels = panels;
        again();
    }
    ArrangeOutcome again()
    {
        last = puddle.arranged(job);
        apply(last.edit, puddle.book);
        return last;
    }
    [[nodiscard]] std::vector<Piece> all(PieceKind kind) const
    {
        std::vector<Piece> found;
        for (const auto& [id, piece] : puddle.book.pieces.rows()) {
            if (piece.kind == kind)
                found.push_back(piece);
        }
        return found;
    }
    [[nodiscard]] const Piece* showing(QuoteId quote) const
    {
        for (const auto& [id, piece] : puddle.book.pieces.rows()) {
            if (piece.quote == quote)
                return &piece;
        }
        return nullptr;
    }
    Puddle puddle;
    ArrangeJob job;
    ArrangeOutcome last;
};

} // namespace wainscot
