// cotter salvage.

#include "command.hpp"
#include "local_time.hpp"
#include "lost_json.hpp"
#include "salvage.hpp"
#include "session.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, from, name;
    Given at{"--at", ""};
    bool json = false;
};

std::string numbers(const db::Lost& lost)
{
    if (lost.last == 0)
        return "record " + std::to_string(lost.first) + " and all after it, if there were any";
    return lost.first == lost.last ? "record " + std::to_string(lost.first)
                                   : "records " + std::to_string(lost.first) + " to " + std::to_string(lost.last);
}

void tell(const db::Lost& lost)
{
    std::cout << "lost: " << numbers(lost) << " of device " << lost.device.substr(0, 8);
    if (lost.after != 0)
        std::cout << ", after " << desk::to_string(rules::Instant{lost.after});
    if (lost.before != 0)
        std::cout << (lost.after != 0 ? " and before " : ", before ") << desk::to_string(rules::Instant{lost.before});
    std::cout << '\n';
}

void tell(const Options& options, const db::Salvaged& salvaged)
{
    std::cout << salvaged.records << " records and " << salvaged.private_values << " private values carried into "
              << options.store << ", which verifies\n";
    for (const db::Lost& each : salvaged.lost)
        tell(each);
    if (salvaged.private_lost > 0)
        std::cout << "lost: " << salvaged.private_lost << " private values\n";
    for (const std::string& unit : salvaged.stopped)
        std::cout << "stopped: " << unit << '\n';
    if (salvaged.is_whole())
        std::cout << "nothing is lost\n";
}

void print_json(const Options& options, const db::Salvaged& salvaged)
{
    Json lost = Json::array();
    for (const db::Lost& each : salvaged.lost)
        lost.push_back(lost_json(each));
    print({{"book", options.store},
           {"device", salvaged.device},
           {"records", salvaged.records},
           {"lost", lost},
           {"private_values", salvaged.private_values},
           {"private_lost", salvaged.private_lost},
           {"stopped", salvaged.stopped}},
          true);
}

int run(const Options& options)
{
    const rules::Instant at = options.at.is_given() ? instant(options.at) : now();
    const auto salvaged =
        db::Store::salvage(options.from, options.store, {options.name, false, at, rules::utc_day(at)});
    options.json ? print_json(options, salvaged) : tell(options, salvaged);
    return salvaged.is_whole() ? done : negative;
}

} // namespace

void add_salvage(Command app, Chosen& chosen)
{
    const auto options = std::make_shared<Options>();
    auto command = app.subcommand("salvage", "A new book with what can still be read of a damaged one");
    command.option("--from", options->from, "the damaged book; it is left as it is").required();
    command.option("--store", options->store, "a new file").required();
    command.option("--name", options->name, "what people call the new device").required();
    command.option("--at", options->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
