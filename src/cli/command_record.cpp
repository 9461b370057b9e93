// cotter record: writes records of any kind, many lines in one transaction.

#include "command.hpp"
#include "kinds.hpp"
#include "lines.hpp"
#include "local_time.hpp"
#include "writer.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Writer writer;
    std::string kind, file;
};

struct Line {
    std::size_t number;
    Json json;
};

Json read_line(std::size_t number, const std::string& text)
try {
    Json json = records::parse_strictly(text);
    if (!json.is_object())
        throw records::FormError{"an object with about and body is accepted"};
    return json;
} catch (const records::FormError& e) {
    throw BadInput{"line " + std::to_string(number) + ": " + e.what()};
}

std::vector<Line> read_lines(const std::string& file)
{
    std::vector<Line> lines;
    for_each_line(file, "a file of JSON Lines", [&](std::size_t number, const std::string& text) {
        lines.push_back({number, read_line(number, text)});
    });
    if (lines.empty())
        throw BadInput{"nothing to record; one JSON object a line, with about and body, is accepted"};
    return lines;
}

std::string text_in(const Line& line, const char* field, const std::string& otherwise)
{
    const auto found = line.json.find(field);
    if (found == line.json.end())
        return otherwise;
    if (!found->is_string())
        throw BadInput{"line " + std::to_string(line.number) + ": " + field + ": " + records::shown(*found) +
                       " is not accepted; a text is"};
    return found->get<std::string>();
}

void refuse_other_fields(const Line& line, bool any_kind)
{
    for (const auto& [key, unused] : line.json.items())
        if (key != "about" && key != "who" && key != "how" && key != "at" && key != "body" &&
            !(any_kind && key == "kind"))
            throw BadInput{"line " + std::to_string(line.number) + ": " + key +
                           " is not a field; accepted are about, who, how, at, body" + (any_kind ? ", kind" : "")};
}

void refuse_programs_own(const std::string& place, const std::string& name)
{
    const records::Kind* kind = records::find_kind(name);
    if (kind && kind->schema.contains("x-program"))
        throw BadInput{place + name + " is written by " + kind->schema["x-program"].get<std::string>() +
                       "; another kind is accepted"};
}

// From lines to entries, with the clock and zone that hold.
class Making {
public:
    Making(const Options& options, const desk::Hand& hand, bool sample, std::string zone)
        : options_{options}, hand_{hand}, sample_{sample}, zone_{std::move(zone)}
    {
    }

    records::Entry entry(const Line& line)
    {
        const bool any = options_.kind == "any";
        refuse_other_fields(line, any);
        refuse_programs_own("line " + std::to_string(line.number) + ": kind: ", text_in(line, "kind", ""));
        desk::Hand hand = hand_;
        hand.how = text_in(line, "how", hand.how);
        hand.at = at_of(line);
        const std::string kind = any ? text_in(line, "kind", "") : options_.kind;
        const Json body = line.json.value("body", Json::object());
        if (kind == "site" && body.is_object() && body.contains("zone") && body["zone"].is_string())
            zone_ = body["zone"].get<std::string>();
        hand.day = desk::local_day(hand.at, zone_);
        records::Entry made = desk::entry(hand, kind, text_in(line, "about", ""), body);
        made.who = text_in(line, "who", made.by);
        return made;
    }

private:
    rules::Instant at_of(const Line& line) const
    {
        if (!line.json.contains("at"))
            return hand_.at;
        if (!sample_)
            throw BadInput{"line " + std::to_string(line.number) + ": at: is accepted in a sample book only"};
        return instant({"line " + std::to_string(line.number) + ": at", text_in(line, "at", "")});
    }

    const Options& options_;
    desk::Hand hand_;
    bool sample_;
    std::string zone_;
};

bool makes_a_book(const Options& options, const Line& first)
{
    return options.kind == "device" || (options.kind == "any" && text_in(first, "kind", "") == "device");
}

// The first record of a book is its device; `record device` on a file that is not there makes the book.
void make_book(const Options& options, const Line& line)
{
    refuse_other_fields(line, options.kind == "any");
    if (options.writer.as.empty())
        throw BadInput{"--as: who writes is missing; the id of a person is needed"};
    const Json body = line.json.value("body", Json::object());
    if (!body.is_object() || !body.contains("name") || !body["name"].is_string())
        throw BadInput{"line 1: name is missing; what people call the device is needed"};
    Json whole = body;
    whole["public_key"] = std::string(64, '0');
    whole["sample"] = false;
    if (const auto said = body.find("sample"); said != body.end())
        whole["sample"] = *said;
    records::check_body(*records::find_kind("device"), whole);
    db::NewBook facts;
    facts.device_name = body["name"].get<std::string>();
    facts.sample = body.value("sample", false);
    const std::string at = text_in(line, "at", options.writer.at.text);
    if (!at.empty() && !facts.sample)
        throw BadInput{"--at: is accepted in a sample book only"};
    facts.at = at.empty() ? now() : instant({"--at", at});
    facts.day = rules::utc_day(facts.at);
    db::Store::make(options.writer.store, facts);
}

void print_written(const std::vector<records::Record>& written, bool as_json)
{
    for (const records::Record& each : written)
        if (as_json)
            print({{"seq", each.seq}, {"kind", each.entry.kind}, {"about", each.entry.about}, {"hash", each.hash}},
                  true);
    if (!as_json && !written.empty())
        std::cout << written.size() << (written.size() == 1 ? " record" : " records") << " written, the last is "
                  << written.back().seq << '\n';
}

// A book that was made for these lines goes again if one of them is not accepted.
class MadeBook {
public:
    MadeBook(const Options& options, const Line& line)
        : path_{options.writer.store}, folder_{first_missing(std::filesystem::absolute(path_).parent_path())}
    {
        make_book(options, line);
    }
    MadeBook(const MadeBook&) = delete;
    MadeBook& operator=(const MadeBook&) = delete;
    ~MadeBook()
    {
        if (kept_)
            return;
        for (const char* ending : {"", "-wal", "-shm", ".key"})
            std::filesystem::remove(path_ + ending);
        if (!folder_.empty())
            std::filesystem::remove_all(folder_);
    }
    void keep() { kept_ = true; }

private:
    // The uppermost folder that has to be made; "" where all are there.
    static std::filesystem::path first_missing(std::filesystem::path folder)
    {
        std::filesystem::path missing;
        for (; !folder.empty() && !std::filesystem::exists(folder); folder = folder.parent_path())
            missing = folder;
        return missing;
    }

    std::string path_;
    std::filesystem::path folder_;
    bool kept_ = false;
};

std::vector<records::Record> write_all(Session& session, const Options& options, const std::vector<Line>& lines)
{
    auto& store = session.store();
    std::vector<records::Entry> entries;
    Making making{options, session.hand(options.writer.as), store.state().sample,
                  desk::zone_of(store, desk::current_site(store))};
    for (const Line& line : lines)
        entries.push_back(making.entry(line));
    try {
        return desk::write(store, std::move(entries));
    } catch (const records::EntryError& e) {
        throw BadInput{"line " + std::to_string(lines.at(e.index).number) + ": " + e.what()};
    }
}

int run(const Options& options)
{
    refuse_programs_own("KIND: ", options.kind);
    if (options.kind != "any" && !records::find_kind(options.kind))
        throw BadInput{"KIND: \"" + options.kind + "\" is not accepted; `cotter help record` lists the kinds"};
    std::vector<Line> lines = read_lines(options.file);
    std::optional<MadeBook> made;
    if (!std::filesystem::exists(options.writer.store) && makes_a_book(options, lines.front())) {
        made.emplace(options, lines.front());
        lines.erase(lines.begin());
    }
    std::vector<records::Record> written;
    if (made)
        written = db::Store::open(options.writer.store)->newest("device", 1);
    if (!lines.empty()) {
        Session session = open_to_write(options.writer);
        for (auto& each : write_all(session, options, lines))
            written.push_back(std::move(each));
    }
    if (made)
        made->keep();
    print_written(written, options.writer.json);
    return done;
}

} // namespace

void add_record(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("record", "Writes records of any kind");
    command.option("kind", options->kind, "kind of record, or any: each line names its own").required();
    add_writer_options(command, options->writer, "who writes");
    command.option("file", options->file, "JSON Lines (default standard input)");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
