#include "app/ui/kit/tokens.h"

#include <QGuiApplication>

#include <cmath>
#include <utility>

namespace wainscot::ui {

namespace {

Tokens& current()
{
    static Tokens chosen = lightTokens();
    return chosen;
}

// Relative luminance of an sRGB colour (WCAG 2.1 definition).
double luminance(const QColor& colour)
{
    const auto linear = [](double v) {
        return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF())
        + 0.0722 * linear(colour.blueF());
}

double textScale()
{
    return QGuiApplication::font().pointSizeF() / 10.0;
}

Tokens fromSystem(const QPalette& system, Tokens tokens)
{
    tokens.window = tokens.wall = tokens.card = system.color(QPalette::Window);
    tokens.field = tokens.slip = system.color(QPalette::Base);
    tokens.ink = tokens.quiet = tokens.line = tokens.edge = system.color(QPalette::WindowText);
    tokens.accent = system.color(QPalette::Highlight);
    tokens.onAccent = system.color(QPalette::HighlightedText);
    tokens.accentTint = tokens.stopTint = tokens.lookTint = tokens.noteTint = tokens.window;
    tokens.hand = tokens.accent;
    tokens.stop = tokens.look = tokens.note = tokens.ink;
    return tokens;
}

} // namespace

Tokens lightTokens()
{
    Tokens t;
    t.window = 0xffedeae3;
    t.wall = 0xffd3cec3;
    t.card = 0xfff6f4ef;
    t.field = 0xfffbfaf7;
    t.slip = 0xfffbfaf7;
    t.ink = 0xff23211c;
    t.quiet = 0xff595348;
    t.line = 0xffcbc5b8;
    t.edge = 0xff746d60;
    t.accent = 0xff2c5a4c;
    t.onAccent = 0xffffffff;
    t.accentTint = 0xffd5e0d8;
    t.hand = 0xff8a3f6b;
    t.stop = 0xff9c2a20;
    t.stopTint = 0xfff3ddd8;
    t.look = 0xff7d5000;
    t.lookTint = 0xfff4e6c8;
    t.note = 0xff44525f;
    t.noteTint = 0xffdde2e4;
    t.dark = false;
    return t;
}

Tokens darkTokens()
{
    Tokens t;
    t.window = 0xff292823;
    t.wall = 0xff1c1b18;
    t.card = 0xff33312b;
    t.field = 0xff201f1b;
    t.slip = 0xff3a3832;
    t.ink = 0xffece8de;
    t.quiet = 0xffb9b2a4;
    t.line = 0xff47443c;
    t.edge = 0xff928b7c;
    t.accent = 0xff94cdb9;
    t.onAccent = 0xff10231c;
    t.accentTint = 0xff35473f;
    t.hand = 0xffe6a3cb;
    t.stop = 0xfff4958a;
    t.stopTint = 0xff4a2e29;
    t.look = 0xffebbb66;
    t.lookTint = 0xff453a22;
    t.note = 0xffafbdca;
    t.noteTint = 0xff333a40;
    t.dark = true;
    return t;
}

Tokens tokensFor(const QPalette& system, const QColor& usualHighlight)
{
    const QColor window = system.color(QPalette::Window);
    const Tokens own = luminance(window) < 0.18 ? darkTokens() : lightTokens();
    const bool highContrast = contrastRatio(system.color(QPalette::WindowText), window) >= 15.0
        && system.color(QPalette::Highlight) != usualHighlight;
    return highContrast ? fromSystem(system, own) : own;
}

QPalette paletteFor(const Tokens& t)
{
    QPalette palette;
    palette.setColor(QPalette::Window, t.window);
    palette.setColor(QPalette::WindowText, t.ink);
    palette.setColor(QPalette::Base, t.field);
    palette.setColor(QPalette::AlternateBase, t.card);
    palette.setColor(QPalette::Text, t.ink);
    palette.setColor(QPalette::Button, t.card);
    palette.setColor(QPalette::ButtonText, t.ink);
    palette.setColor(QPalette::Highlight, t.accent);
    palette.setColor(QPalette::HighlightedText, t.onAccent);
    palette.setColor(QPalette::PlaceholderText, t.quiet);
    palette.setColor(QPalette::ToolTipBase, t.card);
    palette.setColor(QPalette::ToolTipText, t.ink);
    palette.setColor(QPalette::Light, t.card);
    palette.setColor(QPalette::Midlight, t.line);
    palette.setColor(QPalette::Link, t.accent);
    for (const auto role : {QPalette::Mid, QPalette::Dark, QPalette::Shadow})
        palette.setColor(role, t.edge);
    for (const auto role : {QPalette::ButtonText, QPalette::WindowText, QPalette::Text})
        palette.setColor(QPalette::Disabled, role, t.quiet);
    return palette;
}

const Tokens& tokens()
{
    return current();
}

void setTokens(const Tokens& chosen)
{
    current() = chosen;
}

double contrastRatio(const QColor& a, const QColor& b)
{
    double lighter = luminance(a);
    double darker = luminance(b);
    if (lighter < darker)
        std::swap(lighter, darker);
    return (lighter + 0.05) / (darker + 0.05);
}

int air(double units)
{
    return qRound(units * 4 * (1 + (textScale() - 1) / 2));
}

int scaled(double px)
{
    return qRound(px * textScale());
}

QFont interfaceFont(double relative, QFont::Weight weight)
{
    QFont font = QGuiApplication::font();
    font.setPointSizeF(font.pointSizeF() * relative);
    font.setWeight(weight);
    return font;
}

QFont wordsFont(double relative, QFont::Weight weight)
{
    QFont font(QStringLiteral("Andika"));
    font.setPointSizeF(QGuiApplication::font().pointSizeF() * relative);
    font.setWeight(weight);
    return font;
}

} // namespace wainscot::ui
