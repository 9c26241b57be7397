// The pages of a term's file.
#include "layout/typeset/term_pages.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

QString textOf(const GlyphRun& run)
{
    QString text;
    for (const Cluster& cluster : run.clusters)
        text += cluster.text;
    return run.endsLine ? text + QLatin1Char(' ') : text;
}

QString textOf(const DisplayList& list)
{
    QString text;
    for (const Mark& mark : list.marks) {
        if (const auto* run = std::get_if<GlyphRun>(&mark.shape))
            text += textOf(*run);
    }
    return text;
}

class PagesOfATerm : public ::testing::Test {
protected:
    PagesOfATerm()
    {
        PromptSet prompts = defaultPromptSet();
        prompts.id = m_made.book.promptSets.newId();
        m_made.book.promptSets.put(prompts);
        Experience happened = *m_made.book.experiences.find(m_made.experience);
        happened.on = QDate(2025, 11, 3);
        happened.promptSet = prompts.id;
        m_made.book.experiences.put(happened);
    }
    void say(int count)
    {
        for (int i = 0; i < count; ++i) {
            const QuoteId id =
                m_made.quote(m_ines, QStringLiteral("The water went away %1 times.").arg(i));
            Quote quote = *m_made.book.quotes.find(id);
            quote.prompt = QStringLiteral("notice");
            m_made.book.quotes.put(quote);
        }
    }
    void write(const QString& interpretation)
    {
        Experience happened = *m_made.book.experiences.find(m_made.experience);
        happened.interpretation = interpretation;
        m_made.book.experiences.put(happened);
    }
    std::vector<TermPage> pages()
    {
        m_term.emplace(ClearedTerm::of(
            m_made.book, Audience::Families, QDate(2025, 9, 1), QDate(2025, 12, 1), kTestDay));
        m_pages.emplace(
            *m_term,
            m_style,
            [](const ClearedPanel& panel) { return panelStyle(panel.display()); },
            std::set<TermPart>(kTermParts.begin(), kTermParts.end()));
        std::vector<TermPage> made;
        m_pages->makeBody([&](TermPage page) { made.push_back(std::move(page)); });
        return made;
    }

    ClassBook m_made;
    ChildId m_ines = m_made.child("Ines", only(Audience::Families, {Permission::Words}));
    TermStyle m_style;
    std::optional<ClearedTerm> m_term;
    std::optional<TermPages> m_pages;
};

TEST_F(PagesOfATerm, HoldAllWordsOnceInTheirOrder)
{
    say(90);
    QString all;
    for (const TermPage& page : pages())
        all += textOf(page.list) + QLatin1Char('\n');
    qsizetype at = -1;
    for (int i = 0; i < 90; ++i) {
        const QString words = QStringLiteral("“The water went away %1 times.”").arg(i);
        EXPECT_EQ(all.count(words), 1) << i;
        EXPECT_GT(all.indexOf(words), at) << i;
        at = all.indexOf(words);
    }
}

TEST_F(PagesOfATerm, HaveACoverForABookWithoutATitle)
{
    const PictureId id = m_made.picture(PictureKind::Photo, {true, {}});
    Picture wide = *m_made.book.pictures.find(id);
    wide.size = {400, 300};
    m_made.book.pictures.put(wide);
    Experience nameless = *m_made.book.experiences.find(m_made.experience);
    nameless.title = QString();
    m_made.book.experiences.put(nameless);
    ASSERT_EQ(m_made.book.info.title, QString());
    ASSERT_FALSE(pages().empty());
    const TermPage cover = m_pages->cover();
    int figures = 0;
    for (const Element& element : cover.list.elements) {
        if (element.role != Role::Figure)
            continue;
        ++figures;
        EXPECT_GT(element.bounds.y, Mm(0));
        EXPECT_LT(element.bounds.bottom(), m_style.paper.height);
    }
    EXPECT_EQ(figures, 1);
}

TEST_F(PagesOfATerm, KeepEveryWordInsideTheMargins)
{
    say(60);
    write(QStringLiteral("A long look back. ").repeated(400));
    for (const TermPage& page : pages()) {
        for (const Mark& mark : page.list.marks) {
            const auto* run = std::get_if<GlyphRun>(&mark.shape);
            if (run == nullptr)
                continue;
            EXPECT_GE(run->origin.x.value(), 12) << qPrintable(page.label);
            const Mm end = run->origin.x + unitsToMm(run->positions.back().x());
            EXPECT_LE(end.value(), m_style.paper.width.value() - 12) << qPrintable(page.label);
            EXPECT_GE(run->origin.y.value(), 12);
            EXPECT_LE(run->origin.y.value(), m_style.paper.height.value() - 12);
        }
    }
}

// At least two lines of a paragraph on every page it stands on, and one element on each.
TEST_F(PagesOfATerm, PartALongParagraphWithoutSingleLines)
{
    for (const int repeats : {60, 83, 101, 140, 163}) {
        write(QStringLiteral("The class went back to it. ").repeated(repeats));
        std::size_t all = 0;
        for (const TermPage& page : pages()) {
            std::set<int> elements;
            std::set<double> lines;
            for (const Mark& mark : page.list.marks) {
                const auto* run = std::get_if<GlyphRun>(&mark.shape);
                const bool isParagraph = run != nullptr && mark.element > 0
                    && page.list.elements[static_cast<std::size_t>(mark.element)].role
                        == Role::Paragraph;
                if (!isParagraph || !textOf(*run).contains(QStringLiteral("class")))
                    continue;
                elements.insert(mark.element);
                lines.insert(run->origin.y.value());
            }
            EXPECT_LE(elements.size(), 1U) << repeats;
            EXPECT_NE(lines.size(), 1U) << repeats;
            all += lines.size();
        }
        EXPECT_GT(all, 15U) << repeats;
    }
}

TEST_F(PagesOfATerm, NeverEndWithAHeading)
{
    for (int count = 20; count < 40; ++count) {
        say(1);
        write(QStringLiteral("Back."));
        for (const TermPage& page : pages()) {
            Role last = Role::Document;
            for (const Mark& mark : page.list.marks) {
                if (mark.element > 0 && std::holds_alternative<GlyphRun>(mark.shape))
                    last = page.list.elements[static_cast<std::size_t>(mark.element)].role;
            }
            EXPECT_NE(last, Role::Heading1);
            EXPECT_NE(last, Role::Heading2);
        }
    }
}

TEST_F(PagesOfATerm, AreFoundFromTheContents)
{
    say(70);
    write(QStringLiteral("We looked back."));
    std::vector<ContentsLine> lines;
    const std::vector<TermPage> body = pages();
    for (std::size_t i = 0; i < body.size(); ++i) {
        EXPECT_EQ(body[i].label, QString::number(i + 1));
        for (const Bookmark& mark : body[i].bookmarks)
            lines.push_back({mark.level, mark.title, body[i].label, static_cast<int>(i)});
    }
    ASSERT_EQ(lines.size(), 3U); // the experience, its words, looking back
    EXPECT_GT(lines[2].page, 1);
    const std::vector<TermPage> contents = m_pages->contents(lines);
    ASSERT_EQ(contents.size(), 1U);
    EXPECT_EQ(contents.front().label, QStringLiteral("i"));
    ASSERT_EQ(contents.front().links.size(), lines.size());
    for (std::size_t i = 0; i < lines.size(); ++i)
        EXPECT_EQ(contents.front().links[i].page, lines[i].page);
    EXPECT_TRUE(
        textOf(contents.front().list).contains(QStringLiteral("Looking back ") + lines[2].label));
}

TEST_F(PagesOfATerm, ShowAPanelWholeAndTurnThePageForIt)
{
    const DisplayId hall = m_made.display(Audience::Building);
    m_made.hang(hall, PieceKind::Title, QStringLiteral("Ice"));
    bool found = false;
    for (const TermPage& page : pages()) {
        for (const PanelOnPage& panel : page.panels) {
            found = true;
            EXPECT_EQ(page.part, TermPart::Walls);
            EXPECT_GT(page.list.size.width, page.list.size.height);
            EXPECT_NEAR(panel.place.width / panel.place.height, 841.0 / 594, 1e-9);
            EXPECT_GE(panel.place.x.value(), 12);
            EXPECT_LE(panel.place.right().value(), 297 - 12);
            EXPECT_LE(panel.place.bottom().value(), 210 - 20);
        }
    }
    EXPECT_TRUE(found);
}

} // namespace
} // namespace wainscot
