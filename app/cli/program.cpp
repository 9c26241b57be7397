#include "app/cli/program.h"

#include "app/cli/command.h"
#include "app/jobs/sentences.h"

#include <QJsonDocument>

#include <exception>

namespace wainscot::cli {

namespace {

const QString kProgram = QStringLiteral("wainscot-cli");

QString generalHelp()
{
    QString text = QStringLiteral("Usage: %1 COMMAND ...\n\n").arg(kProgram);
    for (const Command& command : commands()) {
        text += QStringLiteral("  %1  %2\n")
                    .arg(QString::fromLatin1(command.name), -8)
                    .arg(QString::fromLatin1(command.about));
    }
    return text
        + QStringLiteral("\n%1 COMMAND --help tells what a command takes.\n"
                         "Every command takes --json: one JSON object on standard output.\n"
                         "Exit: 0 done; 1 a finding says stop; 2 wrong use; 3 cannot read or "
                         "write; 4 our own mistake.\n")
              .arg(kProgram);
}

QString helpFor(const Command& command)
{
    QString text = QStringLiteral("Usage: %1 %2 %3\n\n%4\n")
                       .arg(kProgram,
                           QString::fromLatin1(command.name),
                           QString::fromLatin1(command.usage),
                           QString::fromLatin1(command.about));
    if (!command.options.empty())
        text += QLatin1Char('\n');
    for (const OptionSpec& option : command.options) {
        QString name = QStringLiteral("--") + QString::fromLatin1(option.name);
        if (option.value != nullptr)
            name += QLatin1Char(' ') + QString::fromLatin1(option.value);
        text += QStringLiteral("  %1  %2\n").arg(name, -26).arg(QString::fromLatin1(option.help));
    }
    return text
        + QStringLiteral("  %1  one JSON object on standard output\n")
              .arg(QStringLiteral("--json"), -26);
}

// Tells progress without flooding: each new thing, then every tenth of it.
class ProgressTeller {
public:
    explicit ProgressTeller(QTextStream& err)
        : m_err(err)
    {
    }
    void tell(const Progress& progress)
    {
        const int tenth = progress.of > 0 ? progress.done * 10 / progress.of : 0;
        if (progress.doing == m_doing && tenth == m_tenth)
            return;
        m_doing = progress.doing;
        m_tenth = tenth;
        m_err << progress.doing;
        if (progress.of > 1)
            m_err << ' ' << progress.done << '/' << progress.of;
        m_err << Qt::endl;
    }

private:
    QTextStream& m_err;
    QString m_doing;
    int m_tenth = -1;
};

Answer answerFor(const Error& error)
{
    Answer answer;
    const QString says = sentenceFor(error);
    answer.exit = exitCodeFor(error.code);
    answer.notes.append(says);
    answer.json.insert(QStringLiteral("error"),
        QJsonObject{{QStringLiteral("code"), nameOf(error.code)},
            {QStringLiteral("subject"), error.subject},
            {QStringLiteral("says"), says}});
    return answer;
}

void print(const Answer& answer, bool json, QTextStream& out, QTextStream& err)
{
    for (const QString& note : answer.notes)
        err << note << '\n';
    if (json) {
        out << QString::fromUtf8(QJsonDocument(answer.json).toJson(QJsonDocument::Indented));
    } else {
        for (const QString& line : answer.lines)
            out << line << '\n';
    }
    err.flush();
    out.flush();
}

Answer run(const Command& command, const QStringList& words, const JobRun& jobRun)
{
    const Result<Arguments> arguments =
        Arguments::parse(words, command.options, command.positionals);
    if (!arguments) {
        Answer answer = answerFor(arguments.error());
        answer.notes.append(QStringLiteral("Usage: %1 %2 %3")
                                .arg(kProgram,
                                    QString::fromLatin1(command.name),
                                    QString::fromLatin1(command.usage)));
        return answer;
    }
    Result<Answer> answer = command.run(*arguments, jobRun);
    return answer ? std::move(answer).value() : answerFor(answer.error());
}

} // namespace

int runProgram(
    const QStringList& words, QTextStream& out, QTextStream& err, const std::atomic<bool>* cancel)
{
    QStringList rest = words;
    const bool json = rest.removeAll(QStringLiteral("--json")) > 0;
    const bool help =
        rest.removeAll(QStringLiteral("--help")) > 0 || rest.removeAll(QStringLiteral("-h")) > 0;
    const QString name = rest.isEmpty() ? QString() : rest.takeFirst();
    const Command* command = commandCalled(name);
    if (help) {
        out << (command != nullptr ? helpFor(*command) : generalHelp());
        out.flush();
        return kDone;
    }
    if (command == nullptr) {
        const QString says = name.isEmpty()
            ? QStringLiteral("A command is missing; %1 --help lists them").arg(kProgram)
            : QStringLiteral("There is no command \"%1\"; %2 --help lists them")
                  .arg(name, kProgram);
        const Answer answer = answerFor({ErrorCode::WrongUse, says, {}});
        print(answer, json, out, err);
        return answer.exit;
    }
    ProgressTeller teller(err);
    JobRun jobRun;
    jobRun.cancel = cancel;
    jobRun.onProgress = [&teller](const Progress& progress) { teller.tell(progress); };
    Answer answer;
    try {
        answer = run(*command, rest, jobRun);
    } catch (const std::exception& exception) {
        answer = answerFor({ErrorCode::Internal, {}, QString::fromLocal8Bit(exception.what())});
    }
    print(answer, json, out, err);
    return answer.exit;
}

} // namespace wainscot::cli
