// cotter bundle: everything about one unit in a period, for an inspector, as a folder that can be checked later.

#include "bundle.hpp"
#include "command.hpp"
#include "papers_out.hpp"
#include "session.hpp"
#include "title_of_paper.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, unit, into, as, pin_file;
    Given from{"--from", ""}, to{"--to", ""}, at{"--at", ""};
    bool json = false;
};

void check_hand(const Options& options, const records::Book& book)
{
    if (!options.as.empty() && !book.fact("person", options.as))
        throw BadInput{"--as: \"" + options.as + "\" is not in this book; the id of a person in it is accepted"};
}

desk::UnitPeriod asked_for(const Options& options, const records::Book& book)
{
    const rules::Day from = day(options.from), to = day(options.to);
    if (to < from)
        throw BadInput{"--to: \"" + options.to.text + "\" is before --from; the same day or a later one is accepted"};
    return desk::unit_period(book, desk::find_unit(book, options.unit), from, to);
}

std::string title_of(const desk::UnitPeriod& period, const records::Book& book)
{
    return "Inspector's bundle " + desk::label_of(book, period.unit) + ", " + rules::to_string(period.from) + " to " +
           rules::to_string(period.to);
}

records::Files signed_files(const db::Store& store, const desk::UnitPeriod& period, const paper::BundleFacts& facts)
{
    records::Files files = bundle_files(store, period, facts);
    const std::string list = list_of(files, facts.receipt), device = facts.receipt.device;
    files[records::list_file] = list + records::last_line(device, store.sign(records::signed_of_list(device, list)));
    return files;
}

// The book says that a receipt is out; if it cannot, there is no bundle either.
void note_in_book(const Options& options, Session& session, const records::Receipt& receipt, const std::string& title)
try {
    if (!options.as.empty())
        desk::write(session.store(), {give_a_receipt(session.hand(options.as), session.store(), receipt.head, title)});
} catch (...) {
    std::error_code ignored;
    std::filesystem::remove_all(options.into, ignored);
    throw;
}

int run(const Options& options)
{
    Session session{open_store(store_or_own(options.store)), options.at, !options.as.empty()};
    if (!options.as.empty()) {
        session.watch_the_clock_now();
        session.sign_in(options.as, options.pin_file);
    }
    db::Store& store = session.store();
    if (store.state().damaged)
        return shown_from(store);
    check_hand(options, store);
    const desk::UnitPeriod period = asked_for(options, store);
    const std::string title = title_of(period, store);
    const paper::BundleFacts facts{title_block(store, title, desk::current_site(store), options.as, session.at()),
                                   store.receipt(session.at())};
    const records::Files files = signed_files(store, period, facts);
    write_folder(options.into, files, "--into");
    note_in_book(options, session, facts.receipt, title);
    print({{"bundle", options.into},
           {"unit", desk::label_of(store, period.unit)},
           {"files", files.size()},
           {"records", period.records.size()},
           {"head", facts.receipt.head.hash}},
          options.json);
    return done;
}

} // namespace

void add_bundle(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("bundle", "Everything about one unit in a period, for an inspector");
    command.option("--store", options->store, "the book (default your own)");
    command.option("--unit", options->unit, "tag, or OWNER/SERIAL").required();
    command.option("--from", options->from.text, "first day, YYYY-MM-DD").required();
    command.option("--to", options->to.text, "last day, YYYY-MM-DD").required();
    command.option("--into", options->into, "a new folder").required();
    command.option("--as", options->as, "who hands it out; the book then says so");
    command.option("--pin-file", options->pin_file, "file with the PIN of who hands it out");
    command.option("--at", options->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
