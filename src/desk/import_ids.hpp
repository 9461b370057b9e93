#pragma once

// The ids of units in a list that has none: a unit is known by its owner and the maker's serial.

#include "register.hpp"

#include <map>
#include <set>

namespace cotter::desk {

class UnitIds {
public:
    explicit UnitIds(const Book& book);

    // The id of the unit with that owner and serial, written in whatever case; for one that is not known yet an id made
    // of its tag, and where that is taken of tag and serial. FormError if neither will do.
    std::string id_of(const std::string& owner, const std::string& serial, const std::string& tag);

    // FormError if another unit has this owner and serial.
    void check(const std::string& id, const std::string& owner, const std::string& serial);

private:
    std::map<std::string, std::string> known_; // by owner and serial
    std::set<std::string> taken_;
};

} // namespace cotter::desk
