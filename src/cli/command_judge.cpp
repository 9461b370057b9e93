// cotter judge: self-contained questions in, decisions out, a line each.

#include "command.hpp"
#include "decision_json.hpp"
#include "lines.hpp"
#include "question_form.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string file;
    bool schema = false, json = false;
};

void judge(std::size_t number, const std::string& line)
{
    try {
        const rules::Question question = records::read_question(line);
        std::cout << decision_json(question, decide(question)).dump(-1, ' ', false, Json::error_handler_t::replace)
                  << '\n';
    } catch (const records::FormError& e) {
        throw BadInput{"line " + std::to_string(number) + ": " + e.what()};
    }
}

int run(const Options& options)
{
    if (options.schema)
        std::cout << records::question_schema().dump(2) << '\n';
    else
        for_each_line(options.file, "a file of questions, one JSON object a line,", judge);
    return done;
}

} // namespace

void add_judge(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("judge", "Answers self-contained questions, a line each");
    command.option("file", options->file, "questions, JSON Lines (default standard input)");
    command.flag("--schema", options->schema, "print the JSON Schema of a question");
    command.flag("--json", options->json, "as always: a JSON object a line");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
