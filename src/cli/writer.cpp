#include "writer.hpp"

namespace cotter::cli {

void add_writer_options(Command command, Writer& writer, const char* who)
{
    command.option("--store", writer.store, "the book").required();
    command.option("--as", writer.as, who).required();
    command.option("--pin-file", writer.pin_file, "file with that person's PIN; a sample book asks none");
    command.option("--at", writer.at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command.flag("--json", writer.json, "print JSON");
}

Session open_to_write(const Writer& writer)
{
    Session session{open_store(writer.store), writer.at, true};
    session.watch_the_clock_now();
    session.sign_in(writer.as, writer.pin_file);
    return session;
}

} // namespace cotter::cli
