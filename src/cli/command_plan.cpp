// cotter plan: the lift plan in force; or one worked out from its worksheet, shown and not written.

#include "command.hpp"
#include "lines.hpp"
#include "plan_work.hpp"
#include "session.hpp"

#include <iterator>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, from;
    Given on{"--on", ""}, at{"--at", ""};
    bool json = false;
};

int show(const Options& options)
{
    Reading reading{store_or_own(options.store)};
    Session session{reading.take(), {"--at", ""}, false};
    auto& store = session.store();
    const rules::Day on = options.on.is_given() ? day(options.on) : session.day();
    const Json plan = desk::plan_for(store, desk::current_site(store), on);
    if (plan.empty())
        throw BadInput{"no lift plan in this book; `cotter record lift_plan` writes one"};
    print(plan, options.json);
    return shown_from(store);
}

struct Sheet {
    std::string about;
    Json body;
};

std::string text_of(const std::string& file)
{
    const auto in = file == "-" ? nullptr : open_text(file, "a worksheet");
    return {std::istreambuf_iterator<char>{in ? *in : std::cin}, {}};
}

Sheet read_sheet(const std::string& file)
{
    const Json whole = records::parse_strictly(text_of(file));
    if (!whole.is_object() || !whole.contains("about") || !whole["about"].is_string() || !whole.contains("body") ||
        !whole["body"].is_object() || !whole["body"].value("worksheet", Json{}).is_object())
        throw BadInput{
            "--from: an object with about, the plan's id, and body, a lift_plan with a worksheet, is accepted"};
    return {whole["about"].get<std::string>(), whole["body"]};
}

// The next issue of the plan, as it is to be checked before it is worked out.
Json with_issue(const records::Book& book, Sheet sheet)
{
    sheet.body["issue"] = desk::doc(book, "plan", sheet.about).value("issue", std::int64_t{0}) + 1;
    if (!sheet.body.contains("site"))
        sheet.body["site"] = desk::current_site(book);
    records::check_body(*records::find_kind("lift_plan"), sheet.body);
    return sheet.body;
}

void print_for_people(const desk::PlanWork& work)
{
    for (const Json& each : work.body.at("results")) {
        std::cout << each.value("about", "") << (each.contains("about") ? ": " : "")
                  << each.at("what").get<std::string>() << ": ";
        if (each.contains("says"))
            std::cout << each.at("says").get<std::string>();
        else
            std::cout << each.at("value") << (each.value("unit", "").empty() ? "" : " ") << each.value("unit", "");
        if (each.contains("limit"))
            std::cout << " (limit " << each.at("limit") << ")";
        std::cout << ". " << each.at("formula").get<std::string>() << " [" << each.at("source").get<std::string>()
                  << "]\n";
    }
    for (const std::string& each : work.refusals)
        std::cout << "DOES NOT FIT: " << one_line(each) << '\n';
}

void print_work(const desk::PlanWork& work, bool as_json)
{
    if (!as_json)
        return print_for_people(work);
    print({{"plan", work.body}, {"does_not_fit", work.refusals}, {"fits", work.refusals.empty()}}, true);
}

int work_out(const Options& options)
{
    const Sheet sheet = read_sheet(options.from);
    Reading reading{store_or_own(options.store)};
    Session session{reading.take(), options.at, false};
    desk::PlanWork work = desk::work_out_plan(session.store(), with_issue(session.store(), sheet), session.at());
    work.body["issued"] = work.body["signed"] = false;
    print_work(work, options.json);
    const int read = shown_from(session.store());
    return work.refusals.empty() ? read : negative;
}

int run(const Options& options) { return options.from.empty() ? show(options) : work_out(options); }

} // namespace

void add_plan(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("plan", "The lift plan in force, or one worked out from its worksheet");
    command.option("--store", options->store, "the book (default your own)");
    const auto on = command.option("--on", options->on.text, "the day (default today at the site)");
    command
        .option("--from", options->from,
                "a worksheet (sample_site/plan_sheets has one): works the plan out and shows it")
        .excludes(on);
    command.option("--at", options->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
