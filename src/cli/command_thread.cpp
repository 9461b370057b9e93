// cotter thread: does a bare pipe go down between struts? Never decides a lift: the attachment is not in it.

#include "command.hpp"
#include "numbers.hpp"
#include "threading.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Given length{"--length", ""}, outside{"--outside", ""}, gap{"--gap", ""}, max_tilt{"--max-tilt", ""};
    Given clearance{"--clearance", "0"}, strut_depth{"--strut-depth", "0"}, room{"--room", ""};
    bool json = false;
};

int run(const Options& options)
{
    rules::Passage passage;
    passage.length = positive(options.length);
    passage.depth = positive(options.outside);
    passage.gap = positive(options.gap);
    passage.max_tilt = at_least_zero(options.max_tilt);
    passage.clearance = at_least_zero(options.clearance);
    passage.strut_depth = at_least_zero(options.strut_depth);
    passage.room = optional_positive(options.room);
    if (passage.max_tilt > 90)
        throw BadInput{"--max-tilt: \"" + options.max_tilt.text + "\" is not accepted; 0 to 90 degrees is"};
    const rules::Threading way = rules::thread(passage);
    const bool fits = way.way != rules::Way::none;
    print({{"fits", fits},
           {"way", std::string{name(way.way)}},
           {"tilt_deg", fits ? Json(way.tilt) : Json{}},
           {"gap_needed_mm", way.gap_needed ? Json(*way.gap_needed) : Json{}}},
          options.json);
    if (!options.json)
        std::cout << "A bare pipe: the attachment is not in it, and it decides no lift.\n";
    return fits ? done : negative;
}

} // namespace

void add_thread(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("thread", "Does a bare pipe go down between struts?");
    command.option("--length", options->length.text, "mm").required();
    command.option("--outside", options->outside.text, "greatest outside diameter, mm").required();
    command.option("--gap", options->gap.text, "between struts, mm").required();
    command.option("--max-tilt", options->max_tilt.text, "degrees").required();
    command.option("--clearance", options->clearance.text, "kept all round, mm (default 0)");
    command.option("--strut-depth", options->strut_depth.text, "mm (default 0)");
    command.option("--room", options->room.text, "below the struts, mm");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
