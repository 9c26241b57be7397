#include "core/voice/sound_key.h"

#include <string>
#include <string_view>

namespace wainscot {
namespace {

constexpr char nothing = '\0';

bool isOneOf(char letter, std::string_view letters)
{
    return letter != nothing && letters.find(letter) != std::string_view::npos;
}

bool isVowel(char letter)
{
    return isOneOf(letter, "aeiou");
}

bool isFront(char letter)
{
    return isOneOf(letter, "eiy");
}

// The Latin letters of a word, small and without accents.
std::string plainLetters(const QString& word)
{
    std::string letters;
    for (const QChar unit : word.normalized(QString::NormalizationForm_KD).toLower()) {
        if (unit >= QLatin1Char('a') && unit <= QLatin1Char('z'))
            letters += char(unit.unicode());
    }
    return letters;
}

std::string withUsualBeginning(std::string letters)
{
    const std::string two = letters.substr(0, 2);
    if (two == "ae" || two == "gn" || two == "kn" || two == "pn" || two == "wr")
        letters.erase(0, 1);
    else if (two == "wh")
        letters.erase(1, 1);
    else if (!letters.empty() && letters[0] == 'x')
        letters[0] = 's';
    return letters;
}

// Goes through the letters of one word and writes its key.
class Sounds {
public:
    explicit Sounds(std::string letters)
        : m_letters(std::move(letters))
    {
    }

    std::string key()
    {
        for (m_at = 0; m_at < m_letters.size(); ++m_at) {
            const char letter = m_letters[m_at];
            if (letter == next() && letter != 'c')
                continue; // a doubled letter sounds once, as its second
            if (!isVowel(letter))
                sayConsonant(letter);
            else if (m_at == 0 || (m_at == 1 && letter == before()))
                say(letter);
        }
        return m_key;
    }

private:
    [[nodiscard]] char letterAt(std::size_t at) const
    {
        return at < m_letters.size() ? m_letters[at] : nothing;
    }
    [[nodiscard]] char before() const { return m_at == 0 ? nothing : m_letters[m_at - 1]; }
    [[nodiscard]] char next() const { return letterAt(m_at + 1); }
    [[nodiscard]] char afterNext() const { return letterAt(m_at + 2); }
    [[nodiscard]] bool endsIn(std::string_view rest) const
    {
        return std::string_view(m_letters).substr(m_at) == rest;
    }

    void say(char sound)
    {
        if (sound != nothing)
            m_key += char(std::toupper(static_cast<unsigned char>(sound)));
    }

    void sayConsonant(char letter)
    {
        switch (letter) {
        case 'b':
            return say(before() == 'm' && next() == nothing ? nothing : 'b');
        case 'c':
            return sayC();
        case 'd':
            return sayD();
        case 'g':
            return sayG();
        case 'h':
            return sayH();
        case 'k':
            return say(before() == 'c' ? nothing : 'k');
        case 'p':
            return say(next() == 'h' ? 'f' : 'p');
        case 'q':
            return say('k');
        case 's':
            return say(next() == 'h' || hushed() ? 'x' : 's');
        case 't':
            return sayT();
        case 'v':
            return say('f');
        case 'w':
        case 'y':
            return say(isVowel(next()) ? letter : nothing);
        case 'x':
            say('k');
            return say('s');
        case 'z':
            return say('s');
        default:
            return say(letter);
        }
    }

    // "-sion", "-tial": the i is not heard and the consonant is sh.
    [[nodiscard]] bool hushed() const { return next() == 'i' && isOneOf(afterNext(), "ao"); }

    void sayC()
    {
        const bool aspirated = next() == 'h';
        if ((aspirated && before() != 's') || (next() == 'i' && afterNext() == 'a'))
            say('x');
        else if (isFront(next()))
            say(before() == 's' ? nothing : 's'); // science
        else if (aspirated || before() != 'c')
            say('k'); // school
    }

    void sayD()
    {
        const bool edge = next() == 'g' && isFront(afterNext());
        say(edge ? 'j' : 't');
        if (edge)
            ++m_at; // the g is in the sound
    }

    void sayG()
    {
        const bool silentGh = next() == 'h' && !isVowel(afterNext()); // night, though
        const bool silentGn = endsIn("gn") || endsIn("gned"); // sign
        if (silentGh || silentGn)
            return;
        say(isFront(next()) && before() != 'g' ? 'j' : 'k');
    }

    void sayH()
    {
        const bool inPair = isOneOf(before(), "cgpst");
        say(!inPair && isVowel(next()) ? 'h' : nothing);
    }

    void sayT()
    {
        if (next() == 'h')
            say('0');
        else if (hushed())
            say('x');
        else if (next() != 'c' || afterNext() != 'h') // catch
            say('t');
    }

    std::string m_letters;
    std::size_t m_at = 0;
    std::string m_key;
};

} // namespace

QString soundKey(const QString& word)
{
    return QString::fromStdString(Sounds(withUsualBeginning(plainLetters(word))).key());
}

} // namespace wainscot
