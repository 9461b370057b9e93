// cotter receipt: gives out a proof of how long the book is and what its last record is.

#include "command.hpp"
#include "pages.hpp"
#include "papers_out.hpp"
#include "receipt.hpp"
#include "title_of_paper.hpp"
#include "writer.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Writer writer;
    std::string to, pdf;
};

int run(const Options& options)
{
    if (options.to.empty())
        throw BadInput{"--to: who has it is missing; a name, or where it is kept, is needed"};
    Session session = open_to_write(options.writer);
    auto& store = session.store();
    const records::Receipt receipt = store.receipt(session.at());
    if (!options.pdf.empty())
        write_file(options.pdf,
                   receipt_pdf(title_block(store, "Receipt of the book", desk::current_site(store), options.writer.as,
                                           session.at()),
                               receipt, options.to),
                   "--pdf");
    desk::write(store, {give_a_receipt(session.hand(options.writer.as), store, receipt.head, options.to)});
    const std::string text = to_text(receipt);
    if (options.writer.json)
        print({{"records", receipt.head.seq}, {"head", receipt.head.hash}, {"receipt", text}}, true);
    else
        std::cout << text << '\n';
    return done;
}

} // namespace

void add_receipt(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("receipt", "A proof of how long the book is, to be kept elsewhere");
    add_writer_options(command, options->writer, "who gives it out");
    command.option("--to", options->to, "who has it, or where it is kept").required();
    command.option("--pdf", options->pdf, "as a page with its QR code too, into this new file");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
