#pragma once

// The words that facts are made of: what is known or not, ids, and enumerated values.

#include "day.hpp"
#include "quantity.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::rules {

using Id = std::string;
using Flag = std::optional<bool>;
template <class T> using Known = std::optional<T>;

inline bool yes(Flag flag) { return flag.value_or(false); }
inline bool no(Flag flag) { return flag.has_value() && !*flag; }

enum class Purpose { lift, use, repair, examination, returned, scrap };
enum class Role { machine, hitch, headplate, hook, sling, attachment };
enum class ItemClass { accessory, machine, people, undecided };
enum class Owner { own, hired, lent, cross_hired };
enum class Basis { six_months, twelve_months, scheme, exceptional, installation };
enum class Danger { present, could_become };
enum class Particular { given, not_typed, lacking, not_applicable };
enum class EventKind {
    touch,
    knock,
    slip,
    drop,
    overload,
    repair,
    welding,
    alteration,
    accident,
    like_for_like,
    lay_up
};
enum class Answered { right, report, stop };
enum class SettingKind { changed, seen };
enum class Shape { straight, bend, junction, cut, other };
enum class Sector { front, side, both };
enum class Mounting { free, rigid };
enum class Listed { listed, missing, not_applicable };
enum class NoticeKind { back, jump };
enum class How { phone, pin };
enum class StaledBy { coupling, setting };

// Ids of one question are short and alike: most differ at an end, which is cheap to see.
inline bool same(const Id& a, const Id& b)
{
    return a.size() == b.size() && (a.empty() || (a.back() == b.back() && a.front() == b.front())) && a == b;
}
inline bool same(const Known<Id>& a, const Id& b) { return a && same(*a, b); }

// Is there such an element in the list?
template <class List, class Value> bool contains(const List& list, const Value& value)
{
    for (const auto& each : list)
        if (each == value)
            return true;
    return false;
}
inline bool contains(const std::vector<Id>& list, const Id& value)
{
    for (const Id& each : list)
        if (same(each, value))
            return true;
    return false;
}

} // namespace cotter::rules
