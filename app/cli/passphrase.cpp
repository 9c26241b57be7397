#include "app/cli/passphrase.h"

#include <QTextStream>

#include <cstdio>
#include <termios.h>
#include <unistd.h>

namespace wainscot::cli {

namespace {

// Nothing that is typed shows while one of these lives.
class Unseen {
public:
    Unseen()
    {
        m_isSet = ::tcgetattr(STDIN_FILENO, &m_before) == 0;
        termios quiet = m_before;
        quiet.c_lflag &= ~tcflag_t(ECHO);
        if (m_isSet)
            ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &quiet);
    }
    Unseen(const Unseen&) = delete;
    Unseen& operator=(const Unseen&) = delete;
    ~Unseen()
    {
        if (m_isSet)
            ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &m_before);
    }

private:
    termios m_before{};
    bool m_isSet = false;
};

QString asked(const QString& question)
{
    QTextStream(stderr) << question << ": " << Qt::flush;
    QTextStream in(stdin);
    const Unseen unseen;
    const QString line = in.readLine();
    QTextStream(stderr) << '\n';
    return line;
}

} // namespace

Result<QString> passphrase(bool isNew)
{
    QString phrase = qEnvironmentVariable("WAINSCOT_PASSPHRASE");
    if (phrase.isEmpty() && ::isatty(STDIN_FILENO) == 0)
        phrase = QTextStream(stdin).readLine();
    else if (phrase.isEmpty()) {
        phrase = asked(QStringLiteral("Passphrase"));
        if (isNew && asked(QStringLiteral("The same again")) != phrase)
            return Error{ErrorCode::WrongUse, QStringLiteral("The two were not the same"), {}};
    }
    if (phrase.isEmpty())
        return Error{ErrorCode::WrongUse,
            QStringLiteral("A passphrase is missing"),
            QStringLiteral("set WAINSCOT_PASSPHRASE, or give it on standard input")};
    return phrase;
}

} // namespace wainscot::cli
