#include "place_words.hpp"

#include "language.hpp"
#include "register.hpp"

namespace cotter::ui {

std::string place_in_words(const records::Book& book, const std::string& place)
{
    const std::string to = "on the way to ", refused = "refused at ";
    return place.empty()           ? words::say("where is not known")
           : place.starts_with(to) ? words::say("on the way to {}", desk::shown_name(book, place.substr(to.size())))
           : place.starts_with(refused)
               ? words::say("refused at {}", desk::shown_name(book, place.substr(refused.size())))
               : desk::shown_name(book, place);
}

} // namespace cotter::ui
