#include "title_of_paper.hpp"

#include "readable.hpp"

namespace cotter::cli {

paper::TitleBlock title_block(const records::Book& book, const std::string& title, const std::string& site,
                              const std::string& as, rules::Instant at)
{
    const auto state = book.state();
    paper::TitleBlock block;
    block.title = title;
    block.site = site.empty() ? "none yet" : desk::shown_name(book, site);
    block.day = paper::local_time(at, desk::zone_of(book, site));
    block.printed_by = as.empty() ? "not said" : desk::shown_name(book, as);
    block.record = std::to_string(state.head.seq) + " \u00b7 " + state.head.hash.substr(0, 8);
    block.sample = state.sample;
    block.made = at;
    return block;
}

} // namespace cotter::cli
