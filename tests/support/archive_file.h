// A PDF as the clauses for archives look at it: every value, every word of its content.
#pragma once

#include <QByteArray>
#include <QStringList>

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include <functional>
#include <map>
#include <set>
#include <vector>

namespace wainscot::archive {

using Handle = QPDFObjectHandle;

struct File {
    QByteArray raw;
    QPDF* pdf = nullptr;
};

[[nodiscard]] QString named(Handle object, const QString& what); // "object 12: ..."
[[nodiscard]] bool isName(Handle value, const char* name);
[[nodiscard]] QStringList filtersOf(Handle stream);
[[nodiscard]] std::string contentOf(Handle stream); // decoded
[[nodiscard]] QByteArray packetOf(const File& file); // of the metadata; empty = none
[[nodiscard]] Handle programOf(Handle font); // null = not embedded

// Every value of the file once, also those inside others.
void visitValues(const File& file, const std::function<void(Handle)>& visit);
void visitDicts(const File& file, const std::function<void(Handle owner, Handle dict)>& visit);
void visitFonts(const File& file, const std::function<void(Handle)>& visit);

// The words of page and form content, in order.
class Operators : public Handle::ParserCallbacks {
public:
    void handleObject(Handle object) override
    {
        if (!object.isOperator()) {
            m_operands.push_back(object);
            return;
        }
        const std::string name = object.getOperatorValue();
        used.insert(name);
        if (name == "ri" && !m_operands.empty())
            intents.insert(m_operands.front().getName());
        if (name == "q")
            deepest = std::max(deepest, ++m_depth);
        if (name == "Q")
            --m_depth;
        if (name == "Tf" && !m_operands.empty())
            m_font = m_operands.front().getName();
        if (name == "k" || name == "K")
            cmyk = true;
        if (name == "Tj" || name == "TJ")
            show();
        m_operands.clear();
    }
    void handleEOF() override { }
    int deepest = 0;
    bool cmyk = false;
    std::set<std::string> used;
    std::set<std::string> intents; // of rendering
    std::map<std::string, std::set<int>> codes; // two bytes each, by font name

private:
    void show()
    {
        const auto add = [&](Handle text) {
            const std::string bytes = text.isString() ? text.getStringValue() : std::string();
            for (std::size_t i = 0; i + 1 < bytes.size(); i += 2)
                codes[m_font].insert(static_cast<unsigned char>(bytes[i]) * 256
                    + static_cast<unsigned char>(bytes[i + 1]));
        };
        Handle shown = m_operands.empty() ? Handle::newNull() : m_operands.back();
        add(shown);
        for (int i = 0; shown.isArray() && i < shown.getArrayNItems(); ++i)
            add(shown.getArrayItem(i));
    }
    std::vector<Handle> m_operands;
    std::string m_font;
    int m_depth = 0;
};

// The content of every page and form, with its resources.
void visitContents(
    const File& file, const std::function<void(const Operators&, Handle resources)>& visit);

} // namespace wainscot::archive
