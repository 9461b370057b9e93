// cotter help: every command with an example that runs; every kind of record with its fields.

#include "command.hpp"
#include "help_examples.hpp"
#include "import_help.hpp"
#include "kinds.hpp"

#include <algorithm>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string word, kind;
    bool schema = false;
};

std::string type_of(const Json& property)
{
    if (property.contains("enum")) {
        std::string names;
        for (const Json& each : property["enum"])
            names += (names.empty() ? "" : " | ") + each.get<std::string>();
        return names;
    }
    if (property.value("format", "") == "date")
        return "day";
    if (!property.contains("type"))
        return "see the schema";
    const Json& type = property["type"];
    return type.is_string() ? type.get<std::string>() : type[0].get<std::string>();
}

void explain(const Json& schema, const std::string& indent)
{
    const Json required = schema.value("required", Json::array());
    const Json properties = schema.value("properties", Json::object());
    for (const auto& [name, property] : properties.items()) {
        const bool must = std::find(required.begin(), required.end(), name) != required.end();
        std::cout << indent << name << " (" << type_of(property) << (must ? ", needed" : "")
                  << "): " << property.value("description", "") << '\n';
        if (property.value("type", Json{}) == "object")
            explain(property, indent + "  ");
        if (property.value("type", Json{}) == "array" && property["items"].value("type", Json{}) == "object")
            explain(property["items"], indent + "  ");
    }
}

Json example_line(const records::Kind& kind)
{
    return {{"about", kind.schema["x-example-about"]}, {"body", kind.schema["examples"][0]}};
}

int explain_kind(const Options& options)
{
    const records::Kind* kind = records::find_kind(options.kind);
    if (!kind)
        throw BadInput{"KIND: \"" + options.kind + "\" is not a kind of record; `cotter help record` lists them"};
    if (options.schema) {
        std::cout << kind->schema.dump(2) << '\n';
        return done;
    }
    std::cout << kind->name << ": " << kind->schema["title"].get<std::string>()
              << ".\nAbout: " << kind->schema["x-about"].get<std::string>() << ".\nFields of the body:\n";
    explain(kind->schema, "  ");
    std::cout << "Example line:\n  " << example_line(*kind).dump() << '\n';
    return done;
}

int list_kinds()
{
    std::cout << "cotter record KIND --store FILE --as ID [FILE.jsonl]: one JSON object a line, with about, body and, "
                 "if need be, who and how.\n"
                 "KIND `any`: each line names its own kind as well, {\"kind\": \"unit\", \"about\": ...}. `record "
                 "device` on a file that is not there makes a "
                 "book.\nKinds:\n";
    for (const auto& kind : records::kinds())
        std::cout << "  " << kind.name << ": " << kind.schema["title"].get<std::string>() << '\n';
    return done;
}

int explain_word(const std::string& word)
{
    for (const auto& [name, example] : examples())
        if (name == word) {
            std::cout << "Example:\n  " << example << "\n`cotter " << word << " --help` lists the options.\n";
            return done;
        }
    std::string names;
    for (const auto& each : examples())
        names += (names.empty() ? "" : ", ") + each.first;
    throw BadInput{"help: \"" + word + "\" is not a command; accepted are " + names};
}

int run(const Options& options)
{
    if (options.word == "record")
        return options.kind.empty() || options.kind == "any" ? list_kinds() : explain_kind(options);
    if ((options.word == "import" || options.word == "export") && !options.kind.empty()) {
        explain_list(options.kind, std::cout);
        return done;
    }
    if (options.word == "import")
        explain_import(std::cout);
    if (!options.word.empty())
        return explain_word(options.word);
    std::cout << "Cotter supports, and never replaces, the lift plan, the maker's instructions, local law and "
                 "competent people.\n"
                 "cotter opens the first screen; `cotter help WORD` has an example of each command:\n";
    for (const auto& [name, example] : examples())
        std::cout << "  " << name << ": " << example << '\n';
    return done;
}

} // namespace

const std::vector<std::pair<std::string, std::string>>& examples()
{
    static const std::vector<std::pair<std::string, std::string>> all{
        {"due", "cotter due --examined 2026-08-31 --on 2026-11-25"},
        {"weigh", "cotter weigh --bore 450 --wall 67 --length 2600 --stated 690"},
        {"sling", "cotter sling --chain 10 --legs 2 --angle 40 --load 1500 --symmetric"},
        {"reach", "cotter reach --chart CHART --over front --radius 5.0 --height 0 --load 1500"},
        {"thread", "cotter thread --length 2600 --outside 720 --gap 3000 --max-tilt 20"},
        {"judge", "echo '{\"id\": \"q1\", \"purpose\": \"lift\"}' | cotter judge"},
        {"lift", "cotter lift --store BOOK --unit CL-02 --pipe sk-450 --machine EX-21 --operator farrow --text"},
        {"record", "echo '{\"about\": \"farrow\", \"body\": {\"name\": \"I. Farrow (invented)\"}}' | cotter record "
                   "person --store BOOK --as quill"},
        {"list", "cotter list stop_called --store BOOK --newest 5"},
        {"receipt", "cotter receipt --store BOOK --as quill --to 'site diary'"},
        {"backup", "cotter backup --store BOOK --to BOOK.backup"},
        {"restore", "cotter restore --from BOOK.backup --store BOOK.again --name 'spare tablet'"},
        {"witness",
         "cotter receipt --store BOOK.again --as quill --to office >BOOK.receipt; cotter witness --store BOOK "
         "--as hallam BOOK.receipt"},
        {"page", "echo iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg== | "
                 "base64 -d >BOOK.png; cotter page BOOK.png --store BOOK --as hallam --what pipe --about sk-450"},
        {"pin",
         "umask 077; echo 402716 >BOOK.pin; cotter pin --store BOOK --as quill --of hallam --new-pin-file BOOK.pin"},
        {"salvage", "cotter salvage --from BOOK --store BOOK.salvaged --name 'spare tablet'"},
        {"plan", "cotter plan --store BOOK"},
        {"laid", "cotter laid --store BOOK"},
        {"board", "cotter board --store BOOK --within 14"},
        {"day", "cotter day --store BOOK --text"},
        {"bundle", "cotter bundle --store BOOK --unit CL-02 --from 2026-11-01 --to 2026-11-25 --into BOOK.bundle"},
        {"export", "cotter export units --store BOOK --to BOOK.units.csv"},
        {"import", "cotter import units --store BOOK --as quill --preview BOOK.units.csv"},
        {"verify", "cotter verify --store BOOK"},
        {"rebuild", "cotter rebuild --store BOOK"},
        {"cab", "cotter cab --store BOOK"},
        {"site", "cotter site --store BOOK"},
        {"yard", "cotter yard --store BOOK"}};
    return all;
}

void add_help(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("help", "Explains a command, or a kind of record");
    command.option("word", options->word, "a command");
    command.option("kind", options->kind, "with record: a kind; with import: a list");
    command.flag("--schema", options->schema, "with record KIND: its JSON Schema");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
