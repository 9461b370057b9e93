// cotter plan: the newest lift plan of the site, as it stands in the book. A plan is written with `cotter record
// lift_plan`.

#include "command.hpp"
#include "session.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store;
    Given on{"--on", ""};
    bool json = false;
};

int run(const Options& options)
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

} // namespace

void add_plan(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("plan", "The lift plan in force");
    command.option("--store", options->store, "the book (default your own)");
    command.option("--on", options->on.text, "the day (default today at the site)");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
