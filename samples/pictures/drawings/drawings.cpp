#include "samples/pictures/drawings/drawings.h"

#include "samples/pictures/drawings/hand.h"

namespace wainscot::samples {
namespace {

const Vec3 kWhitePaper{0.90f, 0.895f, 0.865f};
const Vec3 kCreamPaper{0.88f, 0.85f, 0.77f};

// Pixels per millimetre when the long side is 297 mm.
float scaleOf(QSize size)
{
    return float(std::max(size.width(), size.height())) / 297.0f;
}

void tadpolePerson(Hand& hand, Vec2 at, float size, Vec3 color)
{
    hand.take(Tool::FeltPen, color, 1.6f, 1);
    hand.circle(at, {size, size * 1.08f});
    hand.dab(at + Vec2{-0.36f * size, -0.2f * size}, 0.8f);
    hand.dab(at + Vec2{0.34f * size, -0.24f * size}, 0.8f);
    hand.curve({at + Vec2{-0.45f * size, 0.3f * size},
        at + Vec2{0, 0.58f * size},
        at + Vec2{0.5f * size, 0.24f * size}});
    for (float side : {-1.0f, 1.0f}) {
        const float drift = hand.rng().range(-0.15f, 0.15f) * size;
        hand.line({at + Vec2{side * 0.4f * size, size},
            at + Vec2{side * 0.45f * size + drift, 2.9f * size},
            at + Vec2{side * 0.95f * size + drift, 3.0f * size}});
        const Vec2 wrist = at + Vec2{side * 2.0f * size, hand.rng().range(-0.3f, 0.6f) * size};
        hand.line({at + Vec2{side * 0.95f * size, 0.35f * size}, wrist});
        for (int f = -1; f <= 1; ++f)
            hand.line({wrist, wrist + Vec2{side * 0.4f * size, 0.3f * size * float(f)}});
    }
}

void crayonCloud(Hand& hand, Vec2 at, Vec2 radii, Vec3 outline, Vec3 fill)
{
    hand.take(Tool::Crayon, fill, 5, 0.42f);
    hand.scribble(at, radii * 0.95f, 4.2f, 0.3f);
    hand.take(Tool::Crayon, outline, 3.6f, 0.75f);
    hand.blob(at, radii, 9, 0.2f);
}

void crayonSun(Hand& hand, Vec2 at, float r)
{
    hand.take(Tool::Crayon, pigments::yellow, 5, 0.75f);
    hand.scribble(at, {r, r}, 3.2f, 0.8f);
    hand.take(Tool::Crayon, pigments::orange, 3.4f, 0.8f);
    hand.circle(at, {r, r}, 0.5f);
    for (int i = 0; i < 9; ++i) {
        const float a = float(i) * 0.7f + hand.rng().range(-0.15f, 0.15f);
        const Vec2 d{std::cos(a), std::sin(a)};
        hand.line({at + d * (r * 1.25f), at + d * (r * hand.rng().range(1.7f, 2.3f))});
    }
}

} // namespace

QImage drawingPuddleArrows(QSize size, std::uint32_t seed)
{
    Paper paper(size.width(), size.height(), kWhitePaper, seed);
    Hand hand(paper, scaleOf(size), 0.35f, seed);
    hand.take(Tool::Crayon, pigments::sky, 6, 0.5f);
    hand.scribbleBox({12, 10}, {282, 34}, 5.5f, 0.06f);
    hand.take(Tool::Crayon, pigments::blue, 4.4f, 0.7f);
    hand.scribble({150, 165}, {74, 21}, 4.0f, 0.25f);
    hand.scribble({140, 164}, {60, 18}, 5.0f, -0.4f);
    hand.take(Tool::Crayon, pigments::blue, 4, 0.95f);
    hand.circle({150, 165}, {80, 25}, 0.5f);
    hand.take(Tool::FeltPen, pigments::red, 2.0f, 1);
    for (float x : {116.0f, 138.0f, 166.0f, 190.0f})
        hand.arrow({x, 134 + hand.rng().range(-5, 5)},
            {x + hand.rng().range(-9, 9), 50 + hand.rng().range(-6, 10)},
            10);
    hand.take(Tool::Crayon, pigments::green, 4, 0.65f);
    for (int i = 0; i < 26; ++i) {
        const float x = 10 + float(i) * 10.8f + hand.rng().range(-3, 3);
        hand.line({{x, 203}, {x + hand.rng().range(-3, 3), 188 + hand.rng().range(-4, 5)}});
    }
    hand.take(Tool::Pencil, pigments::graphite, 1.7f, 0.8f);
    hand.write(QStringLiteral("THE PUdL"), {16, 96}, 15, -0.06f);
    hand.write(QStringLiteral("GOS UP"), {214, 96}, 15, -0.05f);
    return paper.scan(1);
}

QImage drawingWorm(QSize size, std::uint32_t seed)
{
    Paper paper(size.width(), size.height(), kCreamPaper, seed);
    Hand hand(paper, scaleOf(size), 0.3f, seed);
    hand.take(Tool::Crayon, pigments::brown, 6, 0.55f);
    hand.scribbleBox({10, 140}, {200, 285}, 5.2f, 0.12f);
    hand.take(Tool::Crayon, pigments::brown, 4.5f, 0.9f);
    hand.line({{6, 138}, {60, 133}, {110, 139}, {160, 132}, {205, 137}});
    hand.take(Tool::Crayon, pigments::blue, 4.2f, 0.8f);
    hand.scribble({104, 128}, {42, 10}, 3.4f, 0.1f);
    hand.circle({104, 128}, {46, 12});
    hand.take(Tool::FeltPen, pigments::blue, 1.8f, 1);
    for (float x : {76.0f, 96.0f, 118.0f, 136.0f})
        for (int i = 0; i < 3; ++i)
            hand.drop(
                {x + hand.rng().range(-5, 5), 154 + float(i) * 19 + hand.rng().range(-4, 4)}, 6);
    hand.take(Tool::FeltPen, pigments::pink, 7.5f, 1);
    hand.curve({{30, 250},
        {46, 228},
        {66, 232},
        {82, 252},
        {102, 256},
        {118, 238},
        {138, 230},
        {158, 221}});
    hand.take(Tool::FeltPen, pigments::black, 1.5f, 1);
    hand.circle({163, 219}, {8, 8.5f});
    hand.dab({160, 217}, 0.7f);
    hand.dab({166, 216}, 0.7f);
    hand.line({{159, 222}, {163, 225}, {168, 221}});
    for (int i = 0; i < 7; ++i)
        hand.line({{48 + float(i) * 16, 228 + hand.rng().range(-2, 12)},
            {46 + float(i) * 16, 240 + hand.rng().range(-2, 12)}});
    crayonCloud(hand, {62, 40}, {34, 16}, pigments::grey, pigments::grey);
    hand.take(Tool::Crayon, pigments::sky, 2.6f, 0.8f);
    for (int i = 0; i < 12; ++i) {
        const float x = 34 + float(i % 4) * 18 + hand.rng().range(-3, 3),
                    y = 68 + std::floor(float(i) / 4) * 16 + hand.rng().range(-3, 3);
        hand.line({{x, y}, {x - 2, y + 9}});
    }
    hand.take(Tool::Pencil, pigments::graphite, 1.7f, 0.9f);
    hand.write(QStringLiteral("WRM"), {128, 38}, 16, 0.06f);
    hand.write(QStringLiteral("DRiNKS"), {108, 78}, 14, 0.05f);
    return paper.scan(1);
}

QImage drawingCloudDrinking(QSize size, std::uint32_t seed)
{
    Paper paper(size.width(), size.height(), kWhitePaper, seed);
    Hand hand(paper, scaleOf(size), 0.4f, seed);
    crayonCloud(hand, {130, 58}, {72, 32}, pigments::blue, pigments::sky);
    hand.take(Tool::FeltPen, pigments::black, 2.0f, 1);
    hand.circle({108, 50}, {6, 7});
    hand.circle({146, 48}, {6, 7});
    hand.dab({109, 51}, 1.2f);
    hand.dab({145, 49}, 1.2f);
    hand.circle({128, 72}, {7, 5});
    hand.take(Tool::FeltPen, pigments::red, 3.2f, 1);
    hand.curve({{128, 76}, {128, 100}, {142, 128}, {146, 164}});
    hand.curve({{137, 74}, {137, 98}, {151, 128}, {154, 163}});
    hand.take(Tool::Crayon, pigments::blue, 4.6f, 0.7f);
    hand.scribble({160, 178}, {86, 15}, 4, 0.15f);
    hand.circle({160, 178}, {90, 17}, 0.5f);
    crayonSun(hand, {258, 36}, 17);
    hand.take(Tool::FeltPen, pigments::purple, 2.0f, 1);
    hand.write(QStringLiteral("KLOUD"), {30, 112}, 16, 0.05f);
    hand.write(QStringLiteral("SLuRP"), {168, 118}, 12, -0.12f);
    return paper.scan(1);
}

QImage drawingYardMap(QSize size, std::uint32_t seed)
{
    Paper paper(size.width(), size.height(), kWhitePaper, seed);
    Hand hand(paper, scaleOf(size), 0.45f, seed);
    hand.take(Tool::Pencil, pigments::graphite, 1.8f, 0.95f);
    hand.line({{22, 30}, {270, 24}, {276, 186}, {26, 192}, {21, 32}});
    hand.take(Tool::FeltPen, pigments::brown, 2.2f, 1);
    hand.line({{34, 40}, {94, 38}, {96, 88}, {36, 90}, {34, 39}});
    hand.line({{30, 42}, {64, 16}, {99, 39}});
    hand.line({{58, 89}, {58, 68}, {72, 67}, {73, 89}});
    hand.take(Tool::Crayon, pigments::yellow, 5, 0.6f);
    hand.scribbleBox({196, 116}, {258, 172}, 4.5f, 0.3f);
    hand.take(Tool::FeltPen, pigments::orange, 2.2f, 1);
    hand.line({{194, 114}, {259, 112}, {262, 174}, {195, 176}, {193, 115}});
    hand.take(Tool::Crayon, pigments::green, 5.5f, 0.7f);
    hand.scribble({232, 60}, {22, 19}, 4, 0.7f);
    hand.circle({232, 60}, {23, 20});
    hand.take(Tool::Crayon, pigments::brown, 4.5f, 0.8f);
    hand.scribbleBox({227, 80}, {236, 102}, 3, 1.5f);
    hand.take(Tool::Crayon, pigments::blue, 4.4f, 0.75f);
    hand.scribble({84, 148}, {32, 18}, 3.6f, 0.2f);
    hand.circle({84, 148}, {34, 20}, 0.5f);
    hand.scribble({156, 74}, {15, 9}, 3.4f, 0.5f);
    hand.circle({156, 74}, {17, 10});
    hand.scribble({150, 164}, {10, 6}, 3, 0.3f);
    hand.take(Tool::FeltPen, pigments::red, 1.7f, 1);
    for (int i = 0; i < 13; ++i) { // the way from the door, in dashes
        const float t = float(i) / 12.0f;
        const Vec2 p =
            mix(mix(Vec2{66, 94}, Vec2{150, 112}, t), mix(Vec2{150, 112}, Vec2{104, 140}, t), t);
        hand.line({p, p + Vec2{3.4f, 1.5f - 3 * t}});
    }
    hand.line({{100, 128}, {110, 138}});
    hand.line({{110, 127}, {101, 139}});
    hand.take(Tool::Pencil, pigments::graphite, 1.7f, 0.9f);
    hand.write(QStringLiteral("DOR"), {46, 97}, 9, 0);
    hand.write(QStringLiteral("BiG PUDL"), {50, 174}, 9, 0.02f);
    hand.write(QStringLiteral("SAnD"), {206, 98}, 10, 0.04f);
    hand.write(QStringLiteral("TRE"), {258, 60}, 8, 0.1f);
    return paper.scan(1);
}

QImage drawingUmbrella(QSize size, std::uint32_t seed)
{
    Paper paper(size.width(), size.height(), kWhitePaper, seed);
    Hand hand(paper, scaleOf(size), 0.3f, seed);
    hand.take(Tool::Crayon, pigments::grey, 6, 0.45f);
    hand.scribbleBox({14, 8}, {196, 30}, 5.5f, 0.1f);
    hand.take(Tool::Crayon, pigments::red, 5, 0.8f);
    hand.scribble({122, 92}, {52, 20}, 4.2f, 0.5f);
    hand.take(Tool::FeltPen, pigments::black, 1.8f, 1);
    hand.line({{66, 104}, {74, 82}, {98, 66}, {124, 62}, {152, 70}, {172, 88}, {178, 106}});
    hand.line({{66, 104},
        {80, 110},
        {94, 102},
        {108, 111},
        {122, 103},
        {137, 111},
        {151, 104},
        {165, 112},
        {178, 106}});
    hand.line({{122, 62}, {123, 108}, {120, 160}, {124, 186}, {134, 190}, {138, 180}});
    tadpolePerson(hand, {88, 164}, 22, pigments::black);
    hand.take(Tool::Crayon, pigments::yellow, 5, 0.8f);
    hand.scribbleBox({70, 218}, {82, 232}, 3, 1.2f);
    hand.scribbleBox({94, 218}, {108, 232}, 3, 1.2f);
    hand.take(Tool::Crayon, pigments::blue, 2.8f, 0.8f);
    for (int i = 0; i < 30; ++i) {
        const float x = 18 + float(i % 10) * 18 + hand.rng().range(-5, 5),
                    y = 36 + std::floor(float(i) / 10) * 13 + hand.rng().range(-5, 5);
        if (y < 60 || x < 60 || x > 184)
            hand.line({{x, y}, {x - 2 + hand.rng().range(-1, 1), y + 8}});
    }
    hand.take(Tool::Crayon, pigments::blue, 4.6f, 0.75f);
    hand.scribble({96, 246}, {66, 13}, 3.8f, 0.15f);
    hand.circle({96, 246}, {70, 15});
    hand.take(Tool::Pencil, pigments::graphite, 1.8f, 0.9f);
    hand.write(QStringLiteral("ME iN RAN"), {60, 272}, 12, 0.02f);
    return paper.scan(1);
}

QImage drawingMeasuring(QSize size, std::uint32_t seed)
{
    Paper paper(size.width(), size.height(), kCreamPaper, seed);
    Hand hand(paper, scaleOf(size), 0.5f, seed);
    const Vec3 rims[] = {pigments::blue, pigments::green, pigments::orange, pigments::red};
    Vec2 radii{108, 66};
    for (int i = 0; i < 4; ++i) {
        hand.take(Tool::FeltPen, rims[i], 2.0f, 1);
        hand.circle({140, 112}, radii, i == 0 ? 0.5f : 0.2f);
        hand.write(QString::number(i + 1), {140 + radii.x - 6, 112 - radii.y * 0.7f - 8}, 9, 0);
        radii = radii * 0.73f;
    }
    hand.take(Tool::Crayon, pigments::blue, 4, 0.7f);
    hand.scribble({140, 112}, {36, 20}, 3.4f, 0.3f);
    hand.take(Tool::Pencil, pigments::graphite, 1.7f, 0.95f);
    hand.line({{30, 190}, {140, 187}, {256, 191}});
    for (int i = 0; i <= 14; ++i) {
        const float x = 30 + float(i) * 16 + hand.rng().range(-2, 2);
        hand.line({{x, 184 + hand.rng().range(-1, 1)}, {x + hand.rng().range(-1, 1), 196}});
    }
    hand.write(QStringLiteral("5 FEET"), {100, 198}, 10, 0);
    hand.write(QStringLiteral("MoNDAY"), {22, 22}, 10, 0.02f);
    hand.write(QStringLiteral("LiTL NOW"), {196, 24}, 9, 0.03f);
    return paper.scan(1);
}

QImage flatSunDrawing(QSize size, std::uint32_t seed)
{
    Paper paper(size.width(), size.height(), kWhitePaper, seed);
    Hand hand(paper, scaleOf(size), 0.35f, seed);
    crayonSun(hand, {232, 48}, 26);
    hand.take(Tool::FeltPen, pigments::black, 1.8f, 1);
    hand.dab({224, 44}, 1);
    hand.dab({240, 43}, 1);
    hand.circle({231, 56}, {5, 4});
    hand.take(Tool::FeltPen, pigments::red, 2.4f, 1);
    hand.line({{226, 60}, {204, 88}, {172, 118}, {140, 152}});
    hand.take(Tool::Crayon, pigments::blue, 4.4f, 0.75f);
    hand.scribble({112, 164}, {66, 20}, 3.8f, 0.2f);
    hand.circle({112, 164}, {70, 23}, 0.5f);
    hand.take(Tool::Crayon, pigments::green, 5, 0.7f);
    hand.scribbleBox({8, 190}, {288, 203}, 4.5f, 0.05f);
    tadpolePerson(hand, {56, 96}, 15, pigments::purple);
    hand.take(Tool::Pencil, pigments::graphite, 1.8f, 0.95f);
    hand.write(QStringLiteral("SUn DRiNKS"), {70, 30}, 12, 0.04f);
    return paper.flat();
}

} // namespace wainscot::samples
