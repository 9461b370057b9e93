#include "written.hpp"

namespace cotter::desk {

using records::Entry;

namespace {

Entry refusal(const Entry& of, const std::string& why)
{
    Entry made = of;
    made.kind = "refused";
    made.who = made.by;
    made.how = of.with_pin ? "pin" : "name only";
    made.body = {{"kind", of.kind}, {"why", why}};
    return made;
}

} // namespace

void note_refusal(records::Book& book, const Entry& of, const std::string& why) { book.append({refusal(of, why)}); }

std::vector<records::Record> write(records::Book& book, std::vector<Entry> entries)
try {
    return book.append(entries);
} catch (const records::EntryError& e) {
    if (e.not_entitled)
        note_refusal(book, entries.at(e.index), e.what());
    throw;
}

} // namespace cotter::desk
