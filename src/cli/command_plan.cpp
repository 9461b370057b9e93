// cotter plan: the lift plan in force; or one worked out from its worksheet, and issued.

#include "command.hpp"
#include "finding_words.hpp"
#include "language.hpp"
#include "lines.hpp"
#include "plan_in_force.hpp"
#include "plan_lines.hpp"
#include "plan_work.hpp"
#include "unloading.hpp"
#include "writer.hpp"
#include "written.hpp"

#include <iterator>
#include <memory>
#include <optional>

namespace cotter::cli {

namespace {

struct Options {
    Writer writer;
    std::string from, unloading;
    Given on{"--on", ""};
    bool issue = false;
};

std::string text_of_result(const Json& each)
{
    std::string text =
        each.value("about", "") + (each.contains("about") ? ": " : "") + each.at("what").get<std::string>() + ": ";
    if (each.contains("says"))
        text += each.at("says").get<std::string>();
    else
        text += each.at("value").dump() + (each.value("unit", "").empty() ? "" : " ") + each.value("unit", "");
    if (each.contains("limit"))
        text += " (" + each.value("limit_is", "limit") + " " + each.at("limit").dump() + ")";
    return one_line(text + ". " + each.at("formula").get<std::string>() + " [" + each.at("source").get<std::string>() +
                    "]");
}

void print_plans(const std::vector<Json>& plans, const records::Book& book, rules::Day on)
{
    for (const Json& plan : plans) {
        std::cout << one_line(desk::head_of_plan(plan))
                  << (desk::is_in_force(plan, on) ? ": in force\n" : ": NOT in force that day\n");
        for (const desk::Reason& each : desk::changes_since(book, plan))
            std::cout << "  OUTSIDE OF IT NOW: " << one_line(words::said(each)) << '\n';
        for (const Json& each : desk::lines_of_plan(book, plan))
            std::cout << "  " << text_of_result(each) << '\n';
    }
}

int show(const Options& options)
{
    Reading reading{store_or_own(options.writer.store)};
    Session session{reading.take(), {"--at", ""}, false};
    auto& store = session.store();
    const rules::Day on = options.on.is_given() ? day(options.on) : session.day();
    const std::vector<Json> plans = desk::plans_for(store, desk::current_site(store), on);
    if (plans.empty())
        throw BadInput{"no lift plan in this book; `cotter plan --from FILE --issue` makes one"};
    if (options.writer.json)
        for (const Json& each : plans)
            print(each, true);
    else
        print_plans(plans, store, on);
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

Sheet read_object(const std::string& file, const std::string& option)
{
    const Json whole = records::parse_strictly(text_of(file));
    if (!whole.is_object() || !whole.contains("about") || !whole["about"].is_string() || !whole.contains("body") ||
        !whole["body"].is_object())
        throw BadInput{option + ": an object with about, the plan's or unit's id, and body is accepted"};
    return {whole["about"].get<std::string>(), whole["body"]};
}

Sheet read_sheet(const std::string& file)
{
    Sheet sheet = read_object(file, "--from");
    if (!sheet.body.value("worksheet", Json{}).is_object())
        throw BadInput{
            "--from: an object with about, the plan's id, and body, a lift_plan with a worksheet, is accepted"};
    return sheet;
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

// Every reason why it does not fit.
std::vector<std::string> reasons(const desk::PlanWork& work, const records::Book& book)
{
    std::vector<std::string> all;
    for (const desk::Reason& each : work.refusals)
        all.push_back(words::said(each));
    const auto naming = [&](const std::string& id) { return desk::shown_name(book, id); };
    for (const desk::PlanStop& each : work.stops)
        all.push_back(words::says_of_planned_lift(each.place, each.finding, each.question, naming));
    return all;
}

void print_lines(const Json& results, const std::vector<std::string>& why_not)
{
    for (const Json& each : results)
        std::cout << text_of_result(each) << '\n';
    for (const std::string& each : why_not)
        std::cout << "DOES NOT FIT: " << one_line(each) << '\n';
}

void print_work(const desk::PlanWork& work, const std::vector<std::string>& why_not, bool as_json)
{
    if (as_json)
        return print({{"plan", work.body}, {"does_not_fit", why_not}, {"fits", work.fits()}}, true);
    print_lines(work.body.at("results"), why_not);
    if (work.body.at("issued") == true)
        std::cout << "Issued: issue " << work.body.at("issue") << '\n';
}

Session open(const Options& options, std::optional<Reading>& reading)
{
    Writer writer = options.writer;
    writer.store = store_or_own(writer.store);
    if (options.issue)
        return open_to_write(writer);
    reading.emplace(writer.store);
    return {reading->take(), writer.at, false};
}

// One answer on standard output, whether it was issued or not.
int work_out(const Options& options)
{
    const Sheet sheet = read_sheet(options.from);
    std::optional<Reading> reading;
    Session session = open(options, reading);
    desk::PlanWork work =
        desk::work_out_plan(session.store(), sheet.about, with_issue(session.store(), sheet), session.at());
    const bool issues = options.issue && work.fits();
    work.body["issued"] = work.body["signed"] = issues;
    if (issues)
        desk::write(session.store(),
                    {desk::entry(session.hand(options.writer.as), "lift_plan", sheet.about, work.body)});
    print_work(work, reasons(work, session.store()), options.writer.json);
    const int read = shown_from(session.store());
    return work.fits() ? read : negative;
}

// A delivery's own plan, worked out and, if it fits and is to be issued, written.
int unload(const Options& options)
{
    const Sheet sheet = read_object(options.unloading, "--unloading");
    records::check_body(*records::find_kind("unloading_plan"), sheet.body);
    std::optional<Reading> reading;
    Session session = open(options, reading);
    desk::PlanWork work = desk::work_out_unloading(session.store(), sheet.about, sheet.body, session.at());
    const bool issues = options.issue && work.fits();
    if (issues)
        desk::write(session.store(),
                    {desk::entry(session.hand(options.writer.as), "unloading_plan", sheet.about, work.body)});
    const auto why_not = reasons(work, session.store());
    if (options.writer.json)
        print({{"plan", work.body}, {"does_not_fit", why_not}, {"fits", work.fits()}, {"issued", issues}}, true);
    else
        print_lines(work.body.at("results"), why_not);
    if (issues && !options.writer.json)
        std::cout << "Issued\n";
    const int read = shown_from(session.store());
    return work.fits() ? read : negative;
}

int run(const Options& options)
{
    if (options.from.empty() && options.unloading.empty() && options.issue)
        throw BadInput{"--issue: needs --from, the worksheet of the plan to be issued, or --unloading"};
    if (options.issue && options.writer.as.empty())
        throw BadInput{"--as: who issues the plan is missing; the id of an appointed person is needed"};
    if (!options.unloading.empty())
        return unload(options);
    return options.from.empty() ? show(options) : work_out(options);
}

} // namespace

void add_plan(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("plan", "The lift plan in force, or one worked out from its worksheet and issued");
    command.option("--store", options->writer.store, "the book (default your own)");
    const auto on = command.option("--on", options->on.text, "the day (default today at the site)");
    command
        .option("--from", options->from,
                "a worksheet (sample_site/plan_sheets has one): works the plan out and shows it")
        .excludes(on);
    command.option("--unloading", options->unloading,
                   "a delivery's own plan (sample_site/plan_sheets has one): works it out and shows it");
    command.flag("--issue", options->issue, "with --from or --unloading: writes it into the book, if it fits");
    command.option("--as", options->writer.as, "with --issue: the appointed person");
    command.option("--pin-file", options->writer.pin_file, "with --issue: file with that person's PIN");
    command.option("--at", options->writer.at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command.flag("--json", options->writer.json, "one JSON object for each plan");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
