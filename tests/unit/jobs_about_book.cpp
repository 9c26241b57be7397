// A book speaks one language: what the program writes on its walls does, too.
#include "app/jobs/about_book.h"
#include "app/jobs/book_jobs.h"
#include "app/jobs/small_print.h"
#include "core/model/ready_prompts.h"
#include "core/store/book_store.h"
#include "tests/support/puddle_book.h"

#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::Contains;
using ::testing::Not;

const QString es = QStringLiteral("es");

void speak(Book& book, const QString& language)
{
    BookInfo info = book.info;
    info.language = language;
    apply(aboutBook(book, info, {}), book);
}

QStringList textsOf(const Book& book)
{
    QStringList texts;
    for (const auto& [id, piece] : book.pieces.rows())
        texts << piece.heading << piece.text;
    return texts;
}

TEST(LanguageCodes, AreThoseOfTheStandard)
{
    for (const char* code : {"en", "es", "pt-BR", "zh-Hant", "so"})
        EXPECT_TRUE(languageCode(QString::fromLatin1(code)).ok()) << code;
    EXPECT_EQ(*languageCode(QStringLiteral(" pt_BR ")), QStringLiteral("pt-BR"));
    for (const char* code : {"", "english", "qq", "e", "en us", "en--US", "../en"})
        EXPECT_FALSE(languageCode(QString::fromLatin1(code)).ok()) << code;
}

class BookInSpanish : public ::testing::Test {
protected:
    BookInSpanish()
    {
        Experience told = *m_puddle.book.experiences.find(m_puddle.experience);
        told.language = m_puddle.book.info.language;
        m_puddle.book.experiences.put(told);
        const ChildId mei = m_puddle.child("Mei", Permissions::all());
        const ChildId ada = m_puddle.child("Ada", Permissions::all());
        m_puddle.said(mei, 3, "se fue al cielo");
        m_puddle.said(ada, 4, "el sol se lo bebe");
        m_puddle.took(3);
        m_puddle.took(4);
        m_job.experience = kPuddleTitle;
        m_job.display = QStringLiteral("Pasillo");
        m_job.panelSize = {Mm(841), Mm(594)};
        m_job.audience = Audience::Building;
    }

    void arrange() { apply(m_puddle.arranged(m_job).edit, m_puddle.book); }

    Puddle m_puddle;
    ArrangeJob m_job;
};

TEST_F(BookInSpanish, HasSpanishWalls)
{
    speak(m_puddle.book, es);
    arrange();
    const QStringList texts = textsOf(m_puddle.book);
    EXPECT_THAT(texts, Contains(QStringLiteral("Lunes, 3 de noviembre")));
    EXPECT_THAT(texts, Contains(QStringLiteral("Lo que entendemos")));
    EXPECT_THAT(texts, Contains(QStringLiteral("Lo que sigue")));
    EXPECT_THAT(texts,
        Contains(QStringLiteral("3\u20134 de noviembre. Palabras anotadas tal como se dijeron.")));
    const Display& display = m_puddle.book.displays.rows().begin()->second;
    EXPECT_EQ(display.language, es);
    EXPECT_EQ(daysOf(m_puddle.book, display), QStringLiteral("3\u20134 de noviembre"));
}

TEST_F(BookInSpanish, TakesAlongWhatWasBegunInEnglish)
{
    arrange();
    speak(m_puddle.book, es);
    EXPECT_EQ(m_puddle.book.experiences.find(m_puddle.experience)->language, es);
    EXPECT_EQ(m_puddle.book.displays.rows().begin()->second.language, es);
    const PromptSet& asked = m_puddle.book.promptSets.rows().begin()->second;
    EXPECT_EQ(asked.prompts, defaultPromptSet(es).prompts);
    // What stands on a panel may be the teacher's by now.
    EXPECT_THAT(textsOf(m_puddle.book), Contains(QStringLiteral("What we make of it")));
    arrange();
    EXPECT_THAT(textsOf(m_puddle.book), Not(Contains(QStringLiteral("What we make of it"))));
}

TEST_F(BookInSpanish, LeavesWhatSpeaksAnotherLanguageAlready)
{
    Experience told = *m_puddle.book.experiences.find(m_puddle.experience);
    told.language = QStringLiteral("tr");
    m_puddle.book.experiences.put(told);
    PromptSet own = m_puddle.book.promptSets.rows().begin()->second;
    own.prompts.front().text = QStringLiteral("What is new?");
    m_puddle.book.promptSets.put(own);
    speak(m_puddle.book, es);
    EXPECT_EQ(m_puddle.book.experiences.find(m_puddle.experience)->language, QStringLiteral("tr"));
    EXPECT_EQ(m_puddle.book.promptSets.rows().begin()->second, own);
}

TEST_F(BookInSpanish, IsNoStepWhereNothingChanges)
{
    EXPECT_TRUE(aboutBook(m_puddle.book, m_puddle.book.info, {}).changes.empty());
}

TEST(AboutBook, IsToldAndSetInABook)
{
    const QTemporaryDir folder;
    const QString book = folder.filePath(QStringLiteral("book"));
    ASSERT_TRUE((NewBookJob{book, QStringLiteral("Gorriones"), es}.run(Puddle::runOf())).ok());
    {
        const auto store = BookStore::open(book, Access::ReadOnly);
        EXPECT_EQ((*store)->book().promptSets.rows().begin()->second.prompts.front().text,
            QString::fromUtf8("\u00bfQu\u00e9 observas?"));
    }
    AboutBookJob job{book};
    EXPECT_EQ(job.run(Puddle::runOf())->language, es);
    job.language = QStringLiteral("klingon");
    const auto refused = job.run(Puddle::runOf());
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(sentenceFor(refused.error()).contains(QStringLiteral("klingon")));
    job.language = QStringLiteral("fr");
    job.title = QStringLiteral(" Moineaux  ");
    ASSERT_TRUE(job.run(Puddle::runOf()).ok());
    const BookInfo now = *AboutBookJob{book}.run(Puddle::runOf());
    EXPECT_EQ(now.title, QStringLiteral("Moineaux"));
    EXPECT_EQ(now.language, QStringLiteral("fr"));
    job.title = QStringLiteral("  ");
    EXPECT_FALSE(job.run(Puddle::runOf()).ok());
}

} // namespace
} // namespace wainscot
