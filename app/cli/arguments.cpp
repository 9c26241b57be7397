#include "app/cli/arguments.h"

#include "core/base/length.h"

#include <algorithm>

namespace wainscot::cli {

namespace {

Error wrongUse(const QString& what)
{
    return {ErrorCode::WrongUse, what, {}};
}

const OptionSpec* find(std::span<const OptionSpec> options, const QString& name)
{
    const auto at = std::find_if(options.begin(), options.end(), [&](const OptionSpec& option) {
        return name == QLatin1String(option.name);
    });
    return at == options.end() ? nullptr : &*at;
}

QString dashed(const QString& name)
{
    return QStringLiteral("--") + name;
}

QString known(std::span<const OptionSpec> options)
{
    QStringList names;
    for (const OptionSpec& option : options)
        names.append(dashed(QString::fromLatin1(option.name)));
    return names.join(QStringLiteral(", "));
}

} // namespace

Result<Arguments> Arguments::parse(
    const QStringList& words, std::span<const OptionSpec> options, const QStringList& positionals)
{
    Arguments arguments;
    bool onlyWords = false;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString& word = words[i];
        if (word == QLatin1String("--") && !onlyWords) {
            onlyWords = true;
            continue;
        }
        if (onlyWords || !word.startsWith(QLatin1String("--"))) {
            arguments.m_words.append(word);
            continue;
        }
        const qsizetype equals = word.indexOf(QLatin1Char('='));
        const QString name = word.mid(2, equals < 0 ? -1 : equals - 2);
        const OptionSpec* option = find(options, name);
        if (option == nullptr) {
            return wrongUse(QStringLiteral("There is no option %1 here; known are %2")
                                .arg(dashed(name), known(options)));
        }
        if (arguments.m_values.contains(name))
            return wrongUse(QStringLiteral("The option %1 stands there twice").arg(dashed(name)));
        if (option->value == nullptr) {
            if (equals >= 0)
                return wrongUse(QStringLiteral("The option %1 takes no value").arg(dashed(name)));
            arguments.m_values.insert(name, {});
            continue;
        }
        const bool follows = i + 1 < words.size() && !words[i + 1].startsWith(QLatin1String("--"));
        if (equals < 0 && !follows) {
            return wrongUse(QStringLiteral("The option %1 needs a value: %1 %2")
                                .arg(dashed(name), QString::fromLatin1(option->value)));
        }
        arguments.m_values.insert(name, equals >= 0 ? word.mid(equals + 1) : words[++i]);
    }
    if (arguments.m_words.size() < positionals.size()) {
        return wrongUse(QStringLiteral("%1 is missing").arg(positionals[arguments.m_words.size()]));
    }
    if (arguments.m_words.size() > positionals.size()) {
        return wrongUse(QStringLiteral("\"%1\" is one word too many; put a name with spaces in "
                                       "quotation marks")
                            .arg(arguments.m_words[positionals.size()]));
    }
    for (const OptionSpec& option : options) {
        if (option.required && !arguments.has(option.name)) {
            return wrongUse(
                QStringLiteral("The option --%1 %2 is missing")
                    .arg(QString::fromLatin1(option.name), QString::fromLatin1(option.value)));
        }
    }
    return arguments;
}

bool Arguments::has(const char* option) const
{
    return m_values.contains(QString::fromLatin1(option));
}

QString Arguments::value(const char* option) const
{
    return m_values.value(QString::fromLatin1(option));
}

Result<int> Arguments::number(const char* option, int least, int most, int otherwise) const
{
    if (!has(option))
        return otherwise;
    bool isNumber = false;
    const int number = value(option).toInt(&isNumber);
    if (!isNumber || number < least || number > most) {
        return wrongUse(QStringLiteral("--%1 takes a whole number from %2 to %3, not \"%4\"")
                            .arg(QString::fromLatin1(option))
                            .arg(least)
                            .arg(most)
                            .arg(value(option)));
    }
    return number;
}

Result<Mm> Arguments::length(const char* option, Mm otherwise, Mm most) const
{
    if (!has(option))
        return otherwise;
    const Result<Mm> length = lengthFromText(value(option));
    if (length && *length > most) {
        return wrongUse(
            QStringLiteral("--%1 is at most %2 mm").arg(QLatin1String(option)).arg(most.value()));
    }
    return length;
}

} // namespace wainscot::cli
