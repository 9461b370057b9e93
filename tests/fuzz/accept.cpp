// Lines of records, written one after another into a book of a staffed site in which a stop is called. What is taken
// is whole: the book verifies, the tables are those that the records say, a body is accepted again, and a lift can be
// asked for. Whatever an operator writes in his own name, the stop stands.

#include "accept.hpp"
#include "cli/sample_book.hpp"
#include "db/power/folder.hpp"
#include "decide.hpp"
#include "fuzzing.hpp"
#include "json_mutator.hpp"
#include "kinds.hpp"
#include "lift_question.hpp"
#include "store.hpp"

#include <algorithm>
#include <sstream>

using namespace cotter;
using namespace cotter::tests;
using records::Entry;

namespace {

constexpr std::size_t most_lines = 6;
const rules::Instant evening{1795622400}; // 2026-11-25T16:00:00Z

Entry entry(const std::string& kind, const std::string& about, Json body, const std::string& by, rules::Instant at)
{
    Entry made;
    made.kind = kind;
    made.about = about;
    made.who = made.by = by;
    made.how = "name only";
    made.at = at;
    made.day = rules::utc_day(at);
    made.body = std::move(body);
    return made;
}

// "07:04"
rules::Instant at_clock(const std::string& clock)
{
    constexpr std::int64_t midnight = 1795564800; // 2026-11-25T00:00:00Z
    return rules::Instant{midnight + std::stoi(clock.substr(0, 2)) * 3600 + std::stoi(clock.substr(3)) * 60};
}

// The sample book as the program makes it, a stop, and the records' hashes.
class Base {
public:
    Base()
    {
        auto store = db::Store::make(path(), {"tablet", true, at_clock("05:00"), rules::utc_day(evening)});
        store->accept_by(desk::accept);
        for (const SampleLine& line : sample_lines())
            if (std::string{line.kind} != "device")
                store->append({entry(line.kind, line.about, Json::parse(tests::text_of(line))["body"],
                                     *line.who ? line.who : "quill", at_clock(line.clock))});
        store->append({entry("stop_called", "cl-02", {{"why", "Jaw looks bent"}}, "iqbal", at_clock("07:30"))});
        for (const auto& record : store->newest("", 1000))
            hashes_.push_back(record.hash);
        std::reverse(hashes_.begin(), hashes_.end());
    }
    fs::path path() const { return folder_.book(); }
    const std::string& hash(std::size_t number) const { return hashes_[number % hashes_.size()]; }

private:
    Folder folder_{"base"};
    std::vector<std::string> hashes_;
};

const Base& base()
{
    static const Base base;
    return base;
}

// The book that is written to; taken anew from the base once something was written.
class Used {
public:
    db::Store& fresh()
    {
        if (!store_) {
            folder_.clear();
            fs::copy_file(base().path(), folder_.book());
            fs::copy_file(base().path().string() + ".key", folder_.book().string() + ".key");
            store_ = db::Store::open(folder_.book());
            store_->accept_by(desk::accept);
        }
        return *store_;
    }
    void written() { store_.reset(); }

private:
    Folder folder_{"used"};
    std::unique_ptr<db::Store> store_;
};

// "#12" anywhere is the hash of record 12: a fuzzer does not guess one.
void put_hashes_in(Json& json)
{
    if (json.is_structured())
        for (Json& each : json)
            put_hashes_in(each);
    if (json.is_string() && json.get_ref<const std::string&>().starts_with("#"))
        json = base().hash(static_cast<std::size_t>(std::atoi(json.get<std::string>().c_str() + 1)));
}

std::string text(const Json& line, const char* field, const std::string& otherwise)
{
    const auto found = line.find(field);
    return found != line.end() && found->is_string() ? found->get<std::string>() : otherwise;
}

std::vector<Entry> read(const std::string& input)
{
    std::vector<Entry> entries;
    std::istringstream in{input};
    for (std::string line; std::getline(in, line) && entries.size() < most_lines;) {
        Json json = records::parse_strictly(line);
        if (!json.is_object())
            continue;
        put_hashes_in(json);
        entries.push_back(entry(text(json, "kind", ""), text(json, "about", ""), json.value("body", Json::object()),
                                text(json, "by", "farrow"),
                                evening + rules::Instant{static_cast<std::int64_t>(60 * entries.size())}));
        entries.back().who = text(json, "who", entries.back().by);
        entries.back().how = text(json, "how", "name only");
    }
    return entries;
}

bool is_taken(db::Store& store, const Entry& entry)
try {
    const auto written = store.append({entry});
    must(written.size() == 1, "one record for an entry");
    records::check_body(*records::find_kind(entry.kind), written[0].entry.body);
    return true;
} catch (const records::FormError& e) {
    must_be_a_line(e.what());
    return false;
}

bool is_stopped(const db::Store& store)
{
    desk::LiftAsked asked;
    asked.unit = "cl-02";
    asked.machine = "ex-21";
    asked.pipe = "sk-450";
    asked.on_the_levers = "farrow";
    asked.now = evening + rules::Instant{3600};
    const rules::Question question = lift_question(store, asked);
    const rules::Decision decision = decide(question);
    return std::any_of(decision.findings.begin(), decision.findings.end(), [](const rules::Finding& finding) {
        return finding.code == rules::Code::unit_quarantined && finding.about.starts_with("CL-02");
    });
}

bool is_his_own(const Entry& entry) { return entry.who == "farrow" && entry.by == "farrow"; }

void look(db::Store& store, bool only_his_own)
{
    const auto found = store.verify();
    must(found.damaged.empty(), found.damaged.empty() ? "" : found.damaged[0].what);
    try {
        must(is_stopped(store) || !only_his_own, "no operator takes a stop away");
    } catch (const desk::NotFound& e) {
        must_be_a_line(e.what());
    }
}

} // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed)
{
    return mutate_json(data, size, most, seed);
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    static Used used;
    const std::vector<Entry> entries = read(tests::text_of(data, size));
    bool any = false, only_his_own = true;
    for (const Entry& each : entries)
        if (is_taken(used.fresh(), each)) {
            any = true;
            only_his_own = only_his_own && is_his_own(each);
        }
    if (any) {
        look(used.fresh(), only_his_own);
        used.written();
    }
    return 0;
} catch (const records::FormError& e) {
    must_be_a_line(e.what());
    return 0;
}
