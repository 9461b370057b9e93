// cotter laid: the log of laid pipes, newest first, joint and level against their tolerances. Reads only.

#include "amounts.hpp"
#include "command.hpp"
#include "laid.hpp"
#include "number_text.hpp"
#include "session.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, site;
    bool json = false;
};

std::string metres(std::int64_t mm) { return desk::number_text(mm, 3) + " m"; }

void print_for_people(const desk::LaidPipe& laid, const records::Book& book)
{
    std::cout << rules::to_string(laid.day) << "  " << desk::shown_name(book, laid.pipe) << "  at "
              << metres(laid.chainage_mm) << (laid.run.empty() ? "" : " of " + laid.run);
    if (laid.invert_mm)
        std::cout << ", invert " << metres(*laid.invert_mm);
    if (const auto above = laid.above_planned_mm())
        std::cout << ", " << words::from_planned(*above);
    if (laid.is_level_within() == false)
        std::cout << ", OUTSIDE the drawing's " << *laid.level_tolerance_mm << " mm";
    if (laid.joint_mm)
        std::cout << ", joint " << *laid.joint_mm << " mm";
    const auto within = laid.is_joint_within();
    if (within)
        std::cout << (*within ? ", within its maker's " : ", OUTSIDE its maker's ") << laid.joint_least_mm.value_or(0)
                  << " to " << (laid.joint_greatest_mm ? std::to_string(*laid.joint_greatest_mm) : "?") << " mm";
    if (laid.gasket_seen == false)
        std::cout << ", gasket NOT seen in its place";
    if (laid.joint_mm && !within)
        std::cout << ", its maker's tolerance is not known";
    std::cout << '\n';
}

int run(const Options& options)
{
    Reading reading{store_or_own(options.store)};
    const auto store = reading.take();
    const std::string site = options.site.empty() ? desk::current_site(*store) : options.site;
    if (!store->fact("site", site))
        throw BadInput{"--site: \"" + site + "\" is not in this book; the id of a site in it is accepted"};
    bool all_in_order = true;
    for (const desk::LaidPipe& each : desk::laid_pipes(*store, site)) {
        all_in_order = all_in_order && each.is_in_order();
        if (options.json)
            print(to_json(each), true);
        else
            print_for_people(each, *store);
    }
    const int read = shown_from(*store);
    return all_in_order ? read : negative;
}

} // namespace

void add_laid(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("laid", "The log of laid pipes; 1 if a joint, a level or a gasket is not in order");
    command.option("--store", options->store, "the book (default your own)");
    command.option("--site", options->site, "site (default the current one)");
    command.flag("--json", options->json, "one JSON object a line");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
