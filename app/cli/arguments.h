// What stands on a command line, checked against what a command takes.
#pragma once

#include "core/base/quantity.h"
#include "core/base/result.h"

#include <QMap>
#include <QString>
#include <QStringList>

#include <optional>
#include <span>

namespace wainscot::cli {

struct OptionSpec {
    const char* name = nullptr; // without the dashes
    const char* value = nullptr; // what follows: "FILE.csv"; null = nothing does
    const char* help = nullptr;
    bool required = false;
};

class Arguments {
public:
    // WrongUse for an unknown or repeated option, a missing value, too few or too many words.
    // "--name value" and "--name=value" both do; "--" ends the options.
    static Result<Arguments> parse(const QStringList& words,
        std::span<const OptionSpec> options,
        const QStringList& positionals);

    [[nodiscard]] bool has(const char* option) const;
    [[nodiscard]] QString value(const char* option) const; // empty when not given
    [[nodiscard]] const QString& positional(qsizetype index) const { return m_words[index]; }

    // A whole number from least to most; WrongUse otherwise. `otherwise` when not given.
    [[nodiscard]] Result<int> number(const char* option, int least, int most, int otherwise) const;
    // A length from 0 to most, with its unit; WrongUse otherwise.
    [[nodiscard]] Result<Mm> length(const char* option, Mm otherwise, Mm most) const;

private:
    QStringList m_words;
    QMap<QString, QString> m_values;
};

} // namespace wainscot::cli
