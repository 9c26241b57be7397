#include "samples/pictures/drawings/hand.h"

#include <map>

#include "samples/pictures/light/noise.h"

namespace wainscot::samples {
namespace {

// Strokes of capital letters on a 0..1 square (x right, y down); ';' lifts the pen.
const std::map<char, const char*>& alphabet()
{
    static const std::map<char, const char*> letters = {
        {'A', "0,1 .5,0 1,1;.2,.6 .8,.6"},
        {'B', "0,0 0,1;0,0 .8,.1 .7,.45 0,.5 .9,.6 .85,.95 0,1"},
        {'C', "1,.15 .5,0 .05,.4 .1,.8 .5,1 1,.85"},
        {'D', "0,0 0,1;0,0 .8,.2 .95,.6 .6,.95 0,1"},
        {'E', "0,0 0,1;0,0 .9,0;0,.5 .7,.5;0,1 .9,1"},
        {'F', "0,0 0,1;0,0 .9,0;0,.5 .7,.5"},
        {'G', "1,.15 .5,0 .05,.4 .1,.85 .6,1 1,.8 1,.55 .6,.55"},
        {'H', "0,0 0,1;1,0 1,1;0,.5 1,.5"},
        {'I', ".5,0 .5,1"},
        {'J', ".8,0 .8,.8 .4,1 .1,.8"},
        {'K', "0,0 0,1;.9,0 0,.55 1,1"},
        {'L', "0,0 0,1;0,1 .9,1"},
        {'M', "0,1 .1,0 .5,.6 .9,0 1,1"},
        {'N', "0,1 0,0 1,1 1,0"},
        {'O', ".5,0 .05,.3 .1,.8 .5,1 .95,.7 .9,.2 .5,0"},
        {'P', "0,0 0,1;0,0 .9,.1 .8,.5 0,.55"},
        {'R', "0,0 0,1;0,0 .9,.1 .8,.5 0,.55;.1,.55 .95,1"},
        {'S', ".95,.12 .5,0 .08,.2 .3,.45 .8,.6 .9,.85 .5,1 .05,.88"},
        {'T', "0,0 1,0;.5,0 .5,1"},
        {'U', "0,0 .05,.75 .5,1 .95,.75 1,0"},
        {'V', "0,0 .5,1 1,0"},
        {'W', "0,0 .25,1 .5,.4 .75,1 1,0"},
        {'X', "0,0 1,1;1,0 0,1"},
        {'Y', "0,0 .5,.5 1,0;.5,.5 .5,1"},
        {'Z', "0,0 1,0 0,1 1,1"},
        {'1', ".2,.25 .5,0 .5,1"},
        {'2', ".05,.25 .5,0 .95,.25 .6,.6 0,1 1,1"},
        {'3', "0,.1 .6,0 .9,.25 .4,.48 .95,.65 .7,.98 0,.92"},
        {'4', ".7,1 .7,0 0,.65 1,.65"},
        {'5', ".9,0 .1,0 .1,.45 .8,.45 .9,.8 .5,1 0,.9"},
        {'!', ".5,0 .5,.7;.5,.93 .52,.97"},
    };
    return letters;
}

std::vector<std::vector<Vec2>> letterStrokes(char c)
{
    std::vector<std::vector<Vec2>> out;
    const auto it = alphabet().find(c);
    if (it == alphabet().end())
        return out;
    for (const QString& part : QString::fromLatin1(it->second).split(QLatin1Char(';'))) {
        std::vector<Vec2> stroke;
        for (const QString& pair : part.split(QLatin1Char(' '))) {
            const QStringList xy = pair.split(QLatin1Char(','));
            stroke.push_back({xy[0].toFloat(), xy[1].toFloat()});
        }
        out.push_back(stroke);
    }
    return out;
}

} // namespace

void Hand::take(Tool tool, Vec3 pigment, float widthMm, float pressure)
{
    m_stroke.tool = tool;
    m_stroke.pigment = pigment;
    m_stroke.width = widthMm * m_unit;
    m_stroke.pressure = pressure;
}

void Hand::draw(std::vector<Vec2> mm, bool keepCorners)
{
    // Resample to about 4 mm, then shake: slow drift plus a faster tremor.
    std::vector<Vec2> fine;
    for (size_t i = 0; i + 1 < mm.size(); ++i) {
        const int steps = std::max(1, int(length(mm[i + 1] - mm[i]) / (keepCorners ? 2.0f : 4.0f)));
        for (int k = 0; k < steps; ++k)
            fine.push_back(mix(mm[i], mm[i + 1], float(k) / float(steps)));
    }
    fine.push_back(mm.back());
    const float shake = 1.0f - m_steadiness;
    const std::uint32_t seed = m_rng.next();
    float along = 0;
    m_stroke.points.clear();
    for (size_t i = 0; i < fine.size(); ++i) {
        if (i)
            along += length(fine[i] - fine[i - 1]);
        const float slow = 3.6f * shake, quick = 0.9f * shake;
        const Vec2 off{
            slow * noise2(along * 0.035f, 0.5f, seed) + quick * noise2(along * 0.30f, 4.5f, seed),
            slow * noise2(along * 0.035f, 8.5f, seed) + quick * noise2(along * 0.30f, 12.5f, seed)};
        m_stroke.points.push_back((fine[i] + off) * m_unit);
    }
    const float pressure = m_stroke.pressure;
    m_stroke.pressure *= m_rng.range(0.88f, 1.1f);
    m_paper.draw(m_stroke);
    m_stroke.pressure = pressure;
}

void Hand::line(std::vector<Vec2> points)
{
    draw(std::move(points), false);
}

void Hand::curve(const std::vector<Vec2>& p)
{
    std::vector<Vec2> out;
    for (size_t i = 0; i + 1 < p.size(); ++i) {
        const Vec2 a = p[i ? i - 1 : 0], b = p[i], c = p[i + 1],
                   d = p[std::min(i + 2, p.size() - 1)];
        for (int k = 0; k < 8; ++k) {
            const float t = float(k) / 8;
            out.push_back((b * 2.0f + (c - a) * t + (a * 2.0f - b * 5.0f + c * 4.0f - d) * (t * t)
                              + (b * 3.0f - a - c * 3.0f + d) * (t * t * t))
                * 0.5f);
        }
    }
    out.push_back(p.back());
    draw(std::move(out), true);
}

void Hand::circle(Vec2 center, Vec2 radii, float overlap)
{
    blob(center, radii, 0, 0);
    if (overlap > 0.4f)
        blob(center + Vec2{m_rng.range(-1, 1), m_rng.range(-1, 1)}, radii * 0.98f, 0, 0);
}

void Hand::blob(Vec2 center, Vec2 radii, float lumps, float amount)
{
    const float start = m_rng.range(0, 6.28f), turns = 2 * kPi * m_rng.range(1.0f, 1.1f);
    const float egg = m_rng.range(-0.08f, 0.08f), lean = m_rng.range(0, 6.28f);
    const float gap = m_rng.range(-0.05f, 0.07f); // the end misses the start
    const int steps = std::max(16, int((radii.x + radii.y) * 0.9f));
    std::vector<Vec2> points;
    for (int i = 0; i <= steps; ++i) {
        const float t = float(i) / float(steps), a = start + turns * t;
        const float r = 1 + egg * std::cos(2 * a + lean) + gap * t
            + amount * std::fabs(std::sin(a * lumps * 0.5f));
        points.push_back(
            {center.x + radii.x * r * std::cos(a), center.y + radii.y * r * std::sin(a)});
    }
    draw(points, lumps > 0);
}

void Hand::arrow(Vec2 from, Vec2 to, float head)
{
    const Vec2 middle = mix(from, to, 0.5f) + Vec2{m_rng.range(-4, 4), m_rng.range(-2, 2)};
    line({from, middle, to});
    const Vec2 d = (to - from) * (1.0f / std::max(1.0f, length(to - from)));
    for (float side : {-1.0f, 1.0f})
        line({to + Vec2{m_rng.range(-1, 1), m_rng.range(-1, 1)},
            to - rotate(d, side * m_rng.range(0.5f, 0.8f)) * (head * m_rng.range(0.8f, 1.2f))});
}

void Hand::zigzag(const std::vector<Vec2>& turns)
{
    // Small hands rest: break the fill into runs of a dozen turns.
    for (size_t i = 0; i + 2 < turns.size();) {
        const size_t count = std::min(turns.size() - i, size_t(9 + m_rng.index(10)));
        draw(std::vector<Vec2>(turns.begin() + long(i), turns.begin() + long(i + count)), false);
        i += count - 1;
    }
}

void Hand::scribble(Vec2 center, Vec2 radii, float gap, float angle)
{
    std::vector<Vec2> turns;
    const float reach = std::max(radii.x, radii.y);
    int side = 1;
    for (float s = -reach; s < reach; s += gap * m_rng.range(0.6f, 1.4f), side = -side) {
        const Vec2 d{std::cos(angle), std::sin(angle)}, n{-d.y, d.x};
        // Half chord of the ellipse along d at offset s.
        const float a = d.x * d.x / (radii.x * radii.x) + d.y * d.y / (radii.y * radii.y);
        const float b = 2 * s * (d.x * n.x / (radii.x * radii.x) + d.y * n.y / (radii.y * radii.y));
        const float c =
            s * s * (n.x * n.x / (radii.x * radii.x) + n.y * n.y / (radii.y * radii.y)) - 1;
        const float disc = b * b - 4 * a * c;
        if (disc < 0)
            continue;
        const float t = (-b + float(side) * std::sqrt(disc)) / (2 * a);
        turns.push_back(center + n * s + d * (t * m_rng.range(0.86f, 1.06f)));
    }
    zigzag(turns);
}

void Hand::scribbleBox(Vec2 a, Vec2 b, float gap, float angle)
{
    std::vector<Vec2> turns;
    const Vec2 d{std::cos(angle), std::sin(angle)};
    int side = 0;
    const bool across = std::fabs(d.x) > std::fabs(d.y);
    const float lean = across ? d.y / d.x : d.x / d.y;
    for (float s = across ? a.y : a.x; s < (across ? b.y : b.x);
         s += gap * m_rng.range(0.6f, 1.4f), side = !side) {
        const float e = m_rng.range(-2.5f, 2.5f);
        if (across) {
            const float x = side ? b.x + e : a.x + e;
            turns.push_back({x, std::clamp(s + lean * (x - a.x), a.y - 2, b.y + 2)});
        } else {
            const float y = side ? b.y + e : a.y + e;
            turns.push_back({std::clamp(s + lean * (y - a.y), a.x - 2, b.x + 2), y});
        }
    }
    zigzag(turns);
}

void Hand::drop(Vec2 at, float size)
{
    line({at + Vec2{m_rng.range(-0.2f, 0.2f) * size, -size},
        at + Vec2{-0.45f * size, 0.1f * size},
        at + Vec2{0, 0.55f * size},
        at + Vec2{0.45f * size, 0.05f * size},
        at + Vec2{0, -0.95f * size}});
}

void Hand::dab(Vec2 at, float size)
{
    line({at,
        at + Vec2{m_rng.range(-1, 1), m_rng.range(-1, 1)} * size,
        at + Vec2{m_rng.range(-1, 1), m_rng.range(-1, 1)} * size});
}

// A letter in lower case in `text` is written mirrored, as beginners do.
void Hand::write(const QString& text, Vec2 at, float size, float slope)
{
    float x = at.x;
    for (const QChar ch : text) {
        if (ch == QLatin1Char(' ')) {
            x += size * m_rng.range(0.5f, 0.8f);
            continue;
        }
        const bool mirrored = ch.isLower();
        const float w = size * m_rng.range(0.5f, 0.82f), h = size * m_rng.range(0.78f, 1.28f);
        const float lift = slope * (x - at.x) + m_rng.range(-0.12f, 0.12f) * size,
                    turn = m_rng.range(-0.14f, 0.14f);
        for (std::vector<Vec2> stroke : letterStrokes(ch.toUpper().toLatin1())) {
            for (Vec2& p : stroke) {
                p = p + Vec2{m_rng.range(-0.09f, 0.09f), m_rng.range(-0.09f, 0.09f)};
                if (mirrored)
                    p.x = 1 - p.x;
                p = rotate({p.x * w, p.y * h}, turn) + Vec2{x, at.y + lift};
            }
            const float steadiness = m_steadiness;
            m_steadiness = std::max(m_steadiness, 0.66f);
            draw(stroke, true);
            m_steadiness = steadiness;
        }
        x += w + size * m_rng.range(0.18f, 0.34f);
    }
}

} // namespace wainscot::samples
