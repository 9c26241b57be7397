// Panels as readable text: every element, line, picture and fill with its place to 0.1 mm. The
// files in tests/data/typeset are what was looked at and found good; set WAINSCOT_ACCEPT=1 to write
// them anew.
#include "layout/typeset/typesetter.h"
#include "tests/support/places.h"
#include "tests/unit/typeset_panels.h"

#include <QFile>
#include <QTextStream>

#include <gtest/gtest.h>

namespace {

using namespace wainscot;
using namespace wainscot::testing;

QString mm(Mm length)
{
    const QString text = QString::number(length.value(), 'f', 1);
    return text == QStringLiteral("-0.0") ? QStringLiteral("0.0") : text;
}

QString nameOfRole(Role role)
{
    switch (role) {
    case Role::Document:
        return QStringLiteral("document");
    case Role::Heading1:
        return QStringLiteral("heading 1");
    case Role::Heading2:
        return QStringLiteral("heading 2");
    case Role::Paragraph:
        return QStringLiteral("paragraph");
    case Role::Quote:
        return QStringLiteral("quote");
    case Role::Figure:
        return QStringLiteral("figure");
    case Role::Caption:
        return QStringLiteral("caption");
    }
    return {};
}

class Dump {
public:
    explicit Dump(const DisplayList& list)
        : m_list(list)
        , m_out(&m_text)
    {
    }

    QString text()
    {
        m_out << mm(m_list.size.width) << " x " << mm(m_list.size.height) << " mm, "
              << m_list.language << ", " << m_list.title << '\n';
        for (const Mark& mark : m_list.marks) {
            if (mark.element >= 0 && mark.element != m_element)
                begin(mark.element);
            std::visit([&](const auto& shape) { write(shape); }, mark.shape);
        }
        m_out.flush();
        return m_text;
    }

private:
    void begin(int index)
    {
        m_element = index;
        const Element& element = m_list.elements[static_cast<std::size_t>(index)];
        m_out << nameOfRole(element.role);
        if (!element.language.isEmpty())
            m_out << " (" << element.language << ')';
        m_out << '\n';
    }
    void write(const Fill& fill)
    {
        m_out << "  fill " << where(fill.rect) << ' ' << QString::number(fill.colour & 0xffffff, 16)
              << '\n';
    }
    void write(const Disc& disc)
    {
        m_out << "  disc " << mm(disc.centre.x) << ' ' << mm(disc.centre.y) << " r "
              << mm(disc.radius) << " ring " << mm(disc.ring) << '\n';
    }

    void write(const Shape& shape)
    {
        const QRectF box = shape.area.boundingRect();
        m_out << "  shape " << where({Mm(box.x()), Mm(box.y()), Mm(box.width()), Mm(box.height())})
              << '\n';
    }
    void write(const PlacedPicture& placed)
    {
        m_out << "  picture " << placed.picture.id.number() << ' ' << where(placed.place) << '\n';
    }
    void write(const GlyphRun& run)
    {
        QString text;
        for (const Cluster& cluster : run.clusters)
            text += cluster.text;
        const Mm first(
            run.positions.empty() ? 0 : run.positions.front().x() * 25.4 / 72 / kUnitsPerPt);
        m_out << "  " << mm(run.origin.x + first) << ' ' << mm(run.origin.y) << "  " << text
              << (run.endsLine ? " /" : "") << "  [" << run.font.familyName() << ' '
              << run.font.weight() << ' ' << run.sizeUnits << "u "
              << QString::number(run.colour & 0xffffff, 16) << (run.rightToLeft ? " rtl" : "")
              << "]\n";
    }
    static QString where(const RectMm& rect)
    {
        return QStringLiteral("%1 %2 %3 x %4")
            .arg(mm(rect.x), mm(rect.y), mm(rect.width), mm(rect.height));
    }

    const DisplayList& m_list;
    QString m_text;
    QTextStream m_out;
    int m_element = -1;
};

void compare(const PanelBuilder& builder, const QString& name)
{
    const ClearedPanel panel = builder.cleared();
    const QString text = Dump(typeset(panel, builder.style())).text();
    QFile file(testData("typeset/%1.txt").arg(name));
    if (qEnvironmentVariableIsSet("WAINSCOT_ACCEPT")) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Text));
        file.write(text.toUtf8());
        return;
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly | QIODevice::Text)) << qPrintable(file.fileName());
    EXPECT_EQ(text.toStdString(), QString::fromUtf8(file.readAll()).toStdString());
}

TEST(PanelAsDrawn, DaysOnAWall)
{
    compare(puddlePanel(), QStringLiteral("puddle"));
}

TEST(PanelAsDrawn, OneDrawing)
{
    compare(drawingPanel(), QStringLiteral("drawing"));
}

TEST(PanelAsDrawn, ManyVoices)
{
    compare(voicesPanel(), QStringLiteral("voices"));
}

TEST(PanelAsDrawn, ForFamiliesInTwoLanguages)
{
    compare(familiesPanel(), QStringLiteral("families"));
}

TEST(PanelAsDrawn, ManyScripts)
{
    compare(manyScriptsPanel(), QStringLiteral("scripts"));
}

} // namespace
