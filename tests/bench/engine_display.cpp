// Displays of several panels: where they break, beside an even share of the moments.
#include "app/jobs/arrange_job.h"
#include "tests/bench/engine_tables.h"
#include "tests/support/class_book.h"
#include "tests/support/engine_documents.h"
#include "tests/support/wall_texts.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <set>

namespace wainscot::engine {

namespace {

constexpr double kMostOfEven = 1.0; // of the even share's price
constexpr double kLeastProven = 0.9;

const QString kTold = QStringLiteral("What the water did");

// A class that came back to one thing on some days; on each of them some children said something
// and photos were taken.
ClassBook seededClass(int seed)
{
    Dice dice(std::uint64_t(seed) + 9000);
    walls::TextPool texts(QStringLiteral("unseen"), QStringLiteral("en"));
    ClassBook made;
    Experience told = *made.book.experiences.find(made.experience);
    told.title = kTold;
    told.context = texts.draw(QStringLiteral("context"), dice);
    told.interpretation = texts.draw(QStringLiteral("interpretation"), dice);
    told.nextSteps = texts.draw(QStringLiteral("next"), dice);
    made.book.experiences.put(told);
    const int days = dice.between(2, 5);
    for (int day = 0; day < days; ++day) {
        const QDate date = QDate(2025, 11, 3).addDays(day);
        const int tellings = dice.between(1, 4);
        for (int k = 0; k < tellings; ++k) {
            const std::string name = "Child " + std::to_string(made.book.children.size() + 1);
            const ChildId who = made.child(name.c_str(), Permissions::all(), "2020-06-01");
            const char* kind = dice.between(0, 2) == 0 ? "medium" : "short";
            Quote quote = *made.book.quotes.find(
                made.quote(who, texts.draw(QString::fromLatin1(kind), dice)));
            quote.on = date;
            made.book.quotes.put(quote);
        }
        for (int k = 0; k < tellings + 1; ++k) {
            const std::string file = "IMG_" + std::to_string(made.book.pictures.size()) + ".jpg";
            Picture picture = *made.book.pictures.find(
                made.picture(PictureKind::Photo, {true, {}}, file.c_str()));
            picture.size = dice.between(0, 3) == 0 ? SizePx{3000, 4000} : SizePx{4000, 2667};
            picture.caption = texts.draw(QStringLiteral("caption"), dice);
            picture.captured = CaptureTime{QDateTime(date, QTime(9 + k, 0)), std::nullopt};
            made.book.pictures.put(picture);
        }
    }
    return made;
}

struct Hung {
    ArrangeOutcome outcome;
    double price = 0;
    int daysSplit = 0;
    double uneven = 0; // share of a panel by which the fullest is fuller than the emptiest
    double cpu = 0; // seconds
};

bool hang(ClassBook& made, int panels, Hung& out)
{
    ArrangeJob job;
    job.experience = kTold;
    job.display = QStringLiteral("Hallway");
    job.audience = Audience::Building;
    job.panels = panels;
    job.advises = false;
    JobRun run;
    run.today = kTestDay;
    const std::clock_t start = std::clock();
    auto arranged = job.run(made.book, run);
    out.cpu = double(std::clock() - start) / CLOCKS_PER_SEC;
    if (!arranged || !std::holds_alternative<ArrangeOutcome>(*arranged))
        return false;
    out.outcome = std::move(std::get<ArrangeOutcome>(*arranged));
    if (!out.outcome.breaks)
        return false;
    out.price = out.outcome.breaks->cost;
    std::vector<double> covered(std::size_t(panels), 0);
    std::vector<std::set<QDate>> days(covered.size());
    for (const ArrangedPiece& one : out.outcome.pieces) {
        const auto panel = std::size_t(one.panel) - 1;
        const RectMm& shown =
            one.piece.picturePlace.isEmpty() ? one.piece.cell : one.piece.picturePlace;
        covered[panel] += shown.areaMm2() / (841.0 * 594.0);
        if (const Quote* quote = made.book.quotes.find(one.piece.quote))
            days[panel].insert(*quote->on);
    }
    for (std::size_t panel = 1; panel < days.size(); ++panel)
        for (const QDate day : days[panel])
            out.daysSplit += days[panel - 1].count(day) > 0 ? 1 : 0;
    const auto [least, most] = std::minmax_element(covered.begin(), covered.end());
    out.uneven = *most - *least;
    return true;
}

// The same display with an even share of the moments on each panel, as a hand would force it.
bool hangEvenly(ClassBook& made, const ArrangeOutcome& free, int panels, Hung& out)
{
    apply(free.edit, made.book);
    std::vector<PieceId> quotes;
    for (const ArrangedPiece& one : free.pieces)
        if (one.piece.kind == PieceKind::Quote)
            quotes.push_back(one.piece.id);
    const auto parts = std::size_t(panels);
    if (quotes.size() < parts)
        return false;
    for (std::size_t panel = 1; panel < parts; ++panel) {
        Piece piece = *made.book.pieces.find(quotes[panel * quotes.size() / parts]);
        piece.startsPanel = true;
        made.book.pieces.put(piece);
    }
    return hang(made, panels, out);
}

struct Sums {
    int displays = 0;
    int proven = 0;
    double tried = 0;
    double price = 0;
    double even = 0;
    int days = 0;
    int daysEven = 0;
    double uneven = 0;
    double unevenEven = 0;
    double cpu = 0;
    int dearer = 0;
};

} // namespace

bool printDisplayTable(const BenchOptions& options)
{
    const int displays = options.quick ? 4 : 30;
    std::printf("Breaks between panels, %d displays each; in brackets an even share of the "
                "moments\n%-8s %8s %14s %18s %16s %14s %8s\n",
        displays,
        "panels",
        "proven",
        "panels tried",
        "price",
        "days split",
        "uneven",
        "CPU s");
    bool met = true;
    for (const int panels : {2, 3}) {
        Sums sum;
        for (int seed = 1; seed <= 2 * displays && sum.displays < displays; ++seed) {
            ClassBook made = seededClass(seed);
            Hung free;
            Hung even;
            if (!hang(made, panels, free) || !hangEvenly(made, free.outcome, panels, even))
                continue;
            ++sum.displays;
            sum.proven += free.outcome.breaks->proven() ? 1 : 0;
            sum.tried += free.outcome.breaks->laidOut;
            sum.price += free.price;
            sum.even += even.price;
            sum.days += free.daysSplit;
            sum.daysEven += even.daysSplit;
            sum.uneven += free.uneven;
            sum.unevenEven += even.uneven;
            sum.cpu += free.cpu;
            sum.dearer += free.price > kMostOfEven * even.price + 1e-6 ? 1 : 0;
        }
        const double count = std::max(1, sum.displays);
        std::printf("%-8d %5d/%-2d %14.1f %9.1f (%6.1f) %8d (%5d) %6.3f (%5.3f) %8.2f\n",
            panels,
            sum.proven,
            sum.displays,
            sum.tried / count,
            sum.price / count,
            sum.even / count,
            sum.days,
            sum.daysEven,
            sum.uneven / count,
            sum.unevenEven / count,
            sum.cpu / count);
        met = met && sum.displays > 0 && sum.dearer == 0
            && sum.proven >= kLeastProven * sum.displays && sum.uneven <= sum.unevenEven;
    }
    std::printf("goals: proven on %.0f %%, no display dearer than its even share, panels more "
                "equally full: %s\n",
        100 * kLeastProven,
        met ? "met" : "missed");
    return met;
}

} // namespace wainscot::engine
