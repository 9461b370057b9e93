// cotter import: a list of units, people, pipes, charts or plans into the book, all of it or nothing.

#include "accept.hpp"
#include "command.hpp"
#include "import.hpp"
#include "import_help.hpp"
#include "lines.hpp"
#include "pins.hpp"
#include "progress.hpp"
#include "writer.hpp"
#include "written.hpp"

#include <iterator>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Writer writer;
    std::string what, file;
    bool preview = false;
};

// One byte more than a table may have is enough to refuse it.
std::string read_all(std::istream& in)
{
    std::string text;
    char block[1 << 16];
    while (text.size() <= desk::longest_table && (in.read(block, sizeof block) || in.gcount() > 0))
        text.append(block, static_cast<std::size_t>(in.gcount()));
    return text;
}

std::string read_file(const std::string& file)
{
    return file == "-" ? read_all(std::cin) : read_all(*open_text(file, "a table of CSV"));
}

[[noreturn]] void stop_cancelled() { throw BadInput{"cancelled; nothing is written"}; }

int say_problems(const Options& options, const std::vector<desk::Problem>& problems)
{
    std::cout.flush();
    const std::string file = options.file == "-" ? "" : options.file + (problems.front().line == 0 ? ": " : " ");
    for (const desk::Problem& each : problems)
        std::cerr << "cotter: " << one_line(file + to_string(each)) << '\n';
    return bad_input;
}

const char* word_for(desk::Outcome outcome)
{
    return outcome == desk::Outcome::added ? "new" : outcome == desk::Outcome::changed ? "changed" : "same";
}

std::string shown(const std::string& value) { return value.empty() ? "(empty)" : one_line(value); }

void print_thing(const desk::Imported& thing)
{
    std::cout << "line " << thing.line << "  " << one_line(thing.id) << ": " << word_for(thing.outcome) << '\n';
    for (const desk::Change& each : thing.changes)
        std::cout << "    " << one_line(each.field) << ": " << shown(each.was) << " -> " << shown(each.is) << '\n';
}

Json to_json(const desk::Imported& thing)
{
    Json changes = Json::array();
    for (const desk::Change& each : thing.changes)
        changes.push_back({{"field", each.field}, {"was", each.was}, {"is", each.is}});
    return {{"line", thing.line}, {"id", thing.id}, {"outcome", word_for(thing.outcome)}, {"changes", changes}};
}

std::size_t count_of(const desk::Import& import, desk::Outcome outcome)
{
    return static_cast<std::size_t>(std::count_if(import.things.begin(), import.things.end(),
                                                  [&](const auto& each) { return each.outcome == outcome; }));
}

void print_sum(const desk::Import& import, bool preview)
{
    std::cout << count_of(import, desk::Outcome::added) << " new, " << count_of(import, desk::Outcome::changed)
              << " changed, " << count_of(import, desk::Outcome::same) << " the same; ";
    if (preview)
        std::cout << "a preview, nothing is written\n";
    else if (import.entries.empty())
        std::cout << "nothing to write\n";
    else
        std::cout << import.entries.size() << (import.entries.size() == 1 ? " record" : " records") << " written\n";
}

void print_import(const Options& options, desk::What what, const desk::Import& import)
{
    for (const desk::Imported& each : import.things)
        if (options.writer.json)
            print(to_json(each), true);
        else if (options.preview)
            print_thing(each);
    if (options.writer.json)
        return;
    print_sum(import, options.preview);
    const bool is_compared = what == desk::What::pipes || what == desk::What::charts;
    if (is_compared && !options.preview && !import.entries.empty())
        std::cout << "what is new or changed is not proved until a second person has compared it with its page: "
                     "`cotter help record compared`\n";
}

// All in one transaction. What is asked of each record counts them.
void write(Session& session, const Options& options, const desk::Import& import, Progress& progress)
{
    const std::size_t total = import.entries.size();
    std::size_t written = 0;
    session.store().accept_by([&](const records::Book& book, records::Entry& entry) {
        if (!progress.at("writing", written++, total))
            stop_cancelled();
        desk::accept(book, entry);
    });
    try {
        desk::write(session.store(), import.entries);
    } catch (const records::EntryError& e) {
        throw BadInput{options.file + " line " + std::to_string(import.entry_lines.at(e.index)) + ": " + e.what()};
    }
}

// A preview asks no PIN, since nothing is written.
desk::Hand hand_for(const Options& options, const Session& session)
{
    return options.preview ? desk::signed_by(session.hand(options.writer.as)) : session.hand(options.writer.as);
}

// Who may not write such a list is refused before it is read, and the refusal is a record like any other.
desk::Import read_import(Session& session, const Options& options, desk::What what, const std::string& table,
                         Progress& progress)
try {
    return prepare_import(session.store(), hand_for(options, session), what, table,
                          [&](std::size_t done, std::size_t total) { return progress.at("reading", done, total); });
} catch (const records::NotEntitled& e) {
    if (!options.preview && session.store().fact("person", options.writer.as))
        desk::note_refusal(session.store(),
                           entry(session.hand(options.writer.as), desk::shape_of(what).kind, options.what, {}),
                           e.what());
    throw;
}

int run(const Options& options)
{
    const auto what = desk::what_named(options.what);
    if (!what)
        throw BadInput{"WHAT: \"" + options.what + "\" is not accepted; " + names_of_lists() + " is"};
    Progress progress;
    const std::string table = read_file(options.file);
    Session session = options.preview ? Session{open_store(options.writer.store), options.writer.at, false}
                                      : open_to_write(options.writer);
    if (!options.preview && desk::are_pins_asked(session.store()) && options.writer.pin_file.empty())
        throw BadInput{"--pin-file: in this book people sign with a PIN; a file with that of " + options.writer.as +
                       " is needed"};
    desk::Import import = read_import(session, options, *what, table, progress);
    if (import.cancelled)
        stop_cancelled();
    if (!import.problems.empty())
        return say_problems(options, import.problems);
    if (!options.preview && !import.entries.empty())
        write(session, options, import, progress);
    print_import(options, *what, import);
    return done;
}

} // namespace

void add_import(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("import", "A list of units, people, pipes, charts or plans into the book");
    command.option("what", options->what, "units, people, pipes, charts or plans").required();
    add_writer_options(command, options->writer, "who writes");
    command.flag("--preview", options->preview, "show what would change, and write nothing");
    command.option("file", options->file, "CSV; - is standard input").required();
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
