#pragma once

// Site: an open defect is cleared: by whom, what was done, a photo of it.

#include "choice.hpp"
#include "outside.hpp"
#include "photo_page.hpp"
#include "phrases.hpp"

#include "outlook.hpp"

#include <optional>
#include <string>

namespace cotter::ui {

// "CL-02: Not right: Pin and keeper whole".
std::string said_of(const Outside& outside, const desk::OpenDefect& defect);

class ClearDefect {
public:
    ClearDefect(const Outside& outside, desk::OpenDefect defect, bool may_type = true); // words? Not in the Cab
    bool draw(Sheet& sheet);                                                            // false when it is left or done

private:
    enum class Page { who, remedy, photo, done, gone };

    void who(Sheet& sheet);
    void remedy(Sheet& sheet);
    void photo(Sheet& sheet);
    void write(std::vector<std::string> photos);
    std::string name() const;
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    desk::OpenDefect defect_;
    Page page_ = Page::who;
    std::size_t turned_ = 0;
    std::string person_;
    Phrases remedy_;
    PhotoPage photo_;
};

} // namespace cotter::ui
