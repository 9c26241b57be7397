#include "tests/support/privacy_book.h"

#include "core/base/wall_text.h"
#include "core/store/originals.h"

#include <QDir>
#include <QTemporaryDir>
#include <QtAlgorithms>

#include <algorithm>
#include <cstdlib>

namespace wainscot {

namespace {

constexpr int kChildren = 6;
constexpr int kPhotos = 5;
constexpr int kWorks = 3;

QString invented(const char* stem, int number)
{
    static const char* const kEnds[] = {
        "abor", "elin", "idox", "ofun", "umir", "yfel", "azo", "ewid"};
    return QString::fromLatin1(stem) + QString::fromLatin1(kEnds[number % 8]);
}

// One hue, in fields of nine tenths to full light.
QImage patterned(const QColor& colour, std::mt19937& random)
{
    QImage fields(9, 8, QImage::Format_RGB32);
    for (int y = 0; y < fields.height(); ++y) {
        for (int x = 0; x < fields.width(); ++x) {
            const double light = 0.9 + 0.1 * double(random() % 1000) / 999;
            fields.setPixelColor(x,
                y,
                QColor::fromRgbF(float(colour.redF() * light),
                    float(colour.greenF() * light),
                    float(colour.blueF() * light)));
        }
    }
    return fields.scaled(240, 180, Qt::IgnoreAspectRatio, Qt::FastTransformation);
}

} // namespace

PrivacyBook::PrivacyBook(unsigned seed, QString picturesFolder)
    : m_random(seed)
    , m_folder(std::move(picturesFolder))
{
    const QStringList& languages = wallLanguages();
    m_class.book.info.language = languages[qsizetype(seed) % languages.size()];
    makeChildren();
    makePictures();
    for (const Audience audience : kAudiences)
        makeDisplay(audience);
}

Permissions PrivacyBook::answers()
{
    Permissions given;
    const unsigned likely = 2 + m_random() % 3;
    for (const Audience audience : kAudiences) {
        for (const Permission permission : kPermissions)
            given.set(permission, audience, m_random() % 4 < likely);
    }
    return given;
}

void PrivacyBook::makeChildren()
{
    for (int i = 0; i < kChildren; ++i) {
        const QString name = invented("Quiv", i) + QLatin1Char(' ') + invented("Zwan", i);
        m_children.push_back(m_class.child(
            name.toUtf8().constData(), answers(), below(2) == 0 ? "2021-04" : nullptr));
    }
    for (int i = 0; i < 2 * kChildren; ++i) {
        const QString token = QStringLiteral("mub") + invented("dak", i % 8) + QString::number(i);
        const ChildId who = m_children[std::size_t(i % kChildren)];
        QString words = QStringLiteral("it was all %1 in there").arg(token);
        if (below(3) == 0)
            words += QStringLiteral(" and %1 saw it").arg(anyName());
        m_told.push_back({m_class.quote(who, words), token});
    }
    Experience told = *m_class.book.experiences.find(m_class.experience);
    told.title = QStringLiteral("What %1 found").arg(anyName());
    told.context = QStringLiteral("We followed %1.").arg(anyName());
    told.on = kTestDay;
    told.language = m_class.book.info.language;
    m_class.book.experiences.put(told);
}

// First name, last name or both, now and then as a part of a possessive or in capitals.
QString PrivacyBook::anyName()
{
    const QString name = m_class.at(m_children[std::size_t(below(kChildren))]).name;
    switch (below(5)) {
    case 0:
        return name;
    case 1:
        return name.section(QLatin1Char(' '), 0, 0) + QStringLiteral("'s friend");
    case 2:
        return name.toUpper();
    default:
        return name.section(QLatin1Char(' '), 0, 0);
    }
}

void PrivacyBook::makePictures()
{
    const QTemporaryDir place;
    for (int i = 0; i < kPhotos + kWorks; ++i) {
        const QColor colour = QColor::fromHsv(i * 45, 255, 255);
        QImage image = patterned(colour, m_random);
        image.setText(QStringLiteral("Author"), QStringLiteral("Vorkundel"));
        const QString file = place.filePath(QStringLiteral("Vorkundel-%1.png").arg(i));
        image.save(file);
        People people{below(6) != 0, {}};
        for (int seen = below(3); seen > 0; --seen) {
            const ChildId child = m_children[std::size_t(below(kChildren))];
            if (std::find(people.children.begin(), people.children.end(), child)
                == people.children.end())
                people.children.push_back(child);
        }
        const PictureKind kind = i < kPhotos ? PictureKind::Photo : PictureKind::Work;
        Picture picture =
            *m_class.book.pictures.find(m_class.picture(kind, std::move(people), "Vorkundel.png"));
        QDir().mkpath(m_folder);
        const auto kept = Originals(m_folder).keep(file);
        if (!kept)
            std::abort();
        picture.sha256 = *kept;
        picture.format = QStringLiteral("png");
        picture.size = {240, 180};
        picture.caption = below(2) == 0 ? QStringLiteral("[names] at the sill.")
                                        : QStringLiteral("%1 at the sill.").arg(anyName());
        m_class.book.pictures.put(picture);
        m_colours[picture.id] = colour;
        m_sights[picture.id] = sightOf(image);
    }
}

// Everything hangs; what may not be seen must vanish by itself.
void PrivacyBook::makeDisplay(Audience audience)
{
    const DisplayId id = m_class.display(audience);
    Display display = m_class.at(id);
    display.name = QStringLiteral("%1 wall of %2").arg(nameOf(audience), anyName());
    display.panelSize = {Mm(420), Mm(297)};
    display.readingDistance = Mm(500);
    display.language = m_class.book.info.language;
    m_class.book.displays.put(display);
    std::vector<PieceId> pieces;
    for (const Told& told : m_told) {
        if (below(3) != 0)
            pieces.push_back(m_class.hang(id, told.quote));
    }
    for (const auto& [picture, colour] : m_colours) {
        if (below(4) != 0)
            pieces.push_back(m_class.hang(id,
                picture,
                below(2) == 0 ? QString() : QStringLiteral("Here is %1.").arg(anyName())));
    }
    pieces.push_back(
        m_class.hang(id, PieceKind::Title, QStringLiteral("%1 and ice").arg(anyName())));
    pieces.push_back(
        m_class.hang(id, PieceKind::Context, QStringLiteral("Then %1 slept.").arg(anyName())));
    pieces.push_back(
        m_class.hang(id, PieceKind::Credits, QStringLiteral("Photos: %1.").arg(anyName())));
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        Piece piece = *m_class.book.pieces.find(pieces[i]);
        const double x = 10 + 80.0 * double(i % 5);
        const double y = 8 + 56.0 * double(i / 5);
        piece.cell = {Mm(x), Mm(y), Mm(76), Mm(54)};
        if (isPicture(piece.kind))
            piece.picturePlace = {Mm(x), Mm(y), Mm(48), Mm(36)};
        piece.heading = below(6) == 0 ? anyName() : QString();
        m_class.book.pieces.put(piece);
    }
}

bool PrivacyBook::isShown(const Picture& picture, Audience audience) const
{
    const Permission needed =
        picture.kind == PictureKind::Photo ? Permission::Photo : Permission::Work;
    const auto& people = picture.people.children;
    return picture.people.lookedAt && std::all_of(people.begin(), people.end(), [&](ChildId child) {
        return m_class.at(child).permissions.allows(needed, audience);
    });
}

PrivacyBook::Pictures PrivacyBook::hungOn(const Display& display) const
{
    Pictures hung;
    for (const Panel* panel : panelsOf(book(), display.id)) {
        for (const Piece* piece : piecesOf(book(), panel->id)) {
            if (const Picture* picture = book().pictures.find(piece->picture))
                hung.push_back(picture);
        }
    }
    return hung;
}

bool PrivacyBook::isNamed(const Child& child, Audience audience, const Pictures& together) const
{
    if (!child.permissions.allows(Permission::FirstName, audience))
        return false;
    if (child.permissions.allows(Permission::PhotoWithName, audience))
        return true;
    return std::none_of(together.begin(), together.end(), [&](const Picture* picture) {
        const auto& people = picture->people.children;
        return picture->kind == PictureKind::Photo && isShown(*picture, audience)
            && std::find(people.begin(), people.end(), child.id) != people.end();
    });
}

Forbidden PrivacyBook::forbidden(Audience audience, const Pictures& together) const
{
    Forbidden all;
    for (const ChildId id : m_children) {
        const Child& child = m_class.at(id);
        if (!isNamed(child, audience, together)) {
            for (const QString& part : child.name.split(QLatin1Char(' ')))
                all.names << part << part.toUpper();
        }
    }
    for (const Told& told : m_told) {
        const Child& child = m_class.at(book().quotes.find(told.quote)->child);
        if (!child.permissions.allows(Permission::Words, audience))
            all.words << told.token;
    }
    for (const auto& [id, colour] : m_colours) {
        if (isShown(*book().pictures.find(id), audience))
            continue;
        all.pictures << colour;
        all.sights << m_sights.at(id);
    }
    return all;
}

Forbidden PrivacyBook::forbiddenOn(const Display& display) const
{
    return forbidden(display.audience, hungOn(display));
}

Forbidden PrivacyBook::forbiddenInTerm(Audience audience) const
{
    Pictures together;
    together.reserve(book().pictures.size());
    for (const auto& [id, picture] : book().pictures.rows())
        together.push_back(&picture);
    return forbidden(audience, together);
}

QStringList PrivacyBook::allowedWordsOn(const Display& display) const
{
    QStringList words;
    for (const Panel* panel : panelsOf(book(), display.id)) {
        for (const Piece* piece : piecesOf(book(), panel->id)) {
            const Quote* quote = book().quotes.find(piece->quote);
            if (quote == nullptr
                || !m_class.at(quote->child)
                        .permissions.allows(Permission::Words, display.audience))
                continue;
            for (const Told& told : m_told) {
                if (told.quote == quote->id)
                    words << told.token;
            }
        }
    }
    return words;
}

QList<QColor> PrivacyBook::allowedPicturesOn(const Display& display) const
{
    QList<QColor> colours;
    for (const Picture* picture : hungOn(display)) {
        if (isShown(*picture, display.audience))
            colours << m_colours.at(picture->id);
    }
    return colours;
}

QList<quint64> PrivacyBook::allowedSightsOn(const Display& display) const
{
    QList<quint64> sights;
    for (const Picture* picture : hungOn(display)) {
        if (isShown(*picture, display.audience))
            sights << m_sights.at(picture->id);
    }
    return sights;
}

QStringList PrivacyBook::tellTales() const
{
    QStringList all{QStringLiteral("Vorkundel"), m_folder};
    for (const auto& [id, picture] : book().pictures.rows())
        all << picture.sha256;
    return all;
}

quint64 sightOf(const QImage& image)
{
    const QImage fields = image.convertToFormat(QImage::Format_RGB32)
                              .scaled(9, 8, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    const auto light = [&](int x, int y) {
        const QRgb pixel = fields.pixel(x, y);
        return 2126 * qRed(pixel) + 7152 * qGreen(pixel) + 722 * qBlue(pixel);
    };
    quint64 sight = 0;
    for (int y = 0; y < 8; ++y) {
        for (int x = 0; x < 8; ++x)
            sight = sight << 1 | (light(x, y) < light(x + 1, y) ? 1U : 0U);
    }
    return sight;
}

bool looksLike(quint64 one, quint64 other)
{
    // In 1,060 displays the same picture came back with up to 11 other bits (seed 266), for JPEG
    // moves fields that are nearly as light as their neighbours. Two that have nothing in common
    // differ in 32, and in 13 or fewer once in some 500,000 pairs (64 throws of a coin).
    constexpr int kMostBits = 13;
    return qPopulationCount(one ^ other) <= kMostBits;
}

int pixelsOf(const QColor& colour, const QImage& image)
{
    constexpr int kNear = 40; // the hues are 45 degrees apart: at least 127 in one channel
    const QRgb wanted = colour.rgb();
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QRgb pixel = image.pixel(x, y);
            count += std::abs(qRed(pixel) - qRed(wanted)) < kNear
                    && std::abs(qGreen(pixel) - qGreen(wanted)) < kNear
                    && std::abs(qBlue(pixel) - qBlue(wanted)) < kNear
                ? 1
                : 0;
        }
    }
    return count;
}

} // namespace wainscot
