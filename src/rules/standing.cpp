#include "standing.hpp"

#include "past.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

namespace cotter::rules {

namespace {

// The records as a graph: which reaches which through `after`.
class History {
public:
    explicit History(const std::vector<SettingRecord>& records)
    {
        order_by_time(records);
        past_ = past_of(links());
        order_by_knowledge();
        find_disputes();
    }

    Standing standing() const;

private:
    struct Pair {
        std::size_t a, b;
    };

    void order_by_time(const std::vector<SettingRecord>& records);
    const SettingRecord& record(std::size_t i) const { return *records_[i]; }
    std::vector<std::vector<std::size_t>> links() const;
    void order_by_knowledge();
    void find_disputes();
    void take_change(std::size_t change);
    void take_look(std::size_t look);
    bool dispute_open_before(std::size_t look) const;
    void dispute_with_concurrent(std::size_t record, bool with_looks);
    void dispute_if_other(std::size_t a, std::size_t b);
    bool is_superseded(std::size_t claim, std::size_t within) const;
    bool is_change(std::size_t i) const { return record(i).kind == SettingKind::changed; }
    bool is_look(std::size_t i) const { return record(i).kind == SettingKind::seen && record(i).state; }
    bool claims(std::size_t i) const { return is_change(i) || enders_.count(i) > 0; }
    bool before(std::size_t older, std::size_t newer) const { return past_[newer][older]; }
    bool knows_all(std::size_t look, const std::set<std::size_t>& members) const;
    bool is_ended(const std::set<std::size_t>& members) const;
    std::vector<std::set<std::size_t>> disputes() const;
    std::vector<std::size_t> newest(bool (History::*is_one)(std::size_t) const) const;
    void add_changer(Standing& standing, std::size_t change) const;
    void add_changers_behind(Standing& standing, std::size_t look) const;

    std::vector<const SettingRecord*> records_; // by time
    Past past_;                                 // which reaches which
    std::vector<std::size_t> order_;            // what a record knows comes before it
    std::vector<Pair> pairs_;                   // that say different states
    std::set<std::size_t> enders_;              // looks at the unit that knew of a dispute
    std::vector<std::size_t> claims_;           // changes and such looks, in order
};

void History::order_by_time(const std::vector<SettingRecord>& records)
{
    for (const SettingRecord& each : records)
        records_.push_back(&each);
    std::sort(records_.begin(), records_.end(), [](const SettingRecord* a, const SettingRecord* b) {
        return std::tie(a->at, a->id) < std::tie(b->at, b->id);
    });
}

// Which records each names that are here.
std::vector<std::vector<std::size_t>> History::links() const
{
    std::map<Id, std::size_t> places;
    for (std::size_t i = 0; i < records_.size(); ++i)
        if (record(i).id)
            places.emplace(*record(i).id, i);
    std::vector<std::vector<std::size_t>> links(records_.size());
    for (std::size_t i = 0; i < records_.size(); ++i)
        for (const Id& id : record(i).after)
            if (const auto found = places.find(id); found != places.end())
                links[i].push_back(found->second);
    return links;
}

void History::order_by_knowledge()
{
    order_.resize(records_.size());
    std::iota(order_.begin(), order_.end(), 0U);
    std::vector<std::ptrdiff_t> known;
    for (const auto& row : past_)
        known.push_back(std::count(row.begin(), row.end(), true));
    std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) { return known[a] < known[b]; });
}

void History::find_disputes()
{
    for (const std::size_t i : order_) {
        if (is_change(i))
            take_change(i);
        else if (is_look(i))
            take_look(i);
    }
}

void History::dispute_if_other(std::size_t a, std::size_t b)
{
    if (record(a).state != record(b).state)
        pairs_.push_back({a, b});
}

// Against all taken so far that this record does not know (they cannot know it).
void History::dispute_with_concurrent(std::size_t record, bool with_looks)
{
    for (const std::size_t other : order_) {
        if (other == record)
            return;
        if (!before(other, record) && (claims(other) || (with_looks && is_look(other))))
            dispute_if_other(other, record);
    }
}

void History::take_change(std::size_t change)
{
    dispute_with_concurrent(change, true);
    claims_.push_back(change);
}

bool History::is_superseded(std::size_t claim, std::size_t within) const
{
    return std::any_of(claims_.begin(), claims_.end(),
                       [&](std::size_t other) { return before(other, within) && before(claim, other); });
}

// A dispute in what the look knew, and no look in what it knew had ended it.
bool History::dispute_open_before(std::size_t look) const
{
    return std::any_of(pairs_.begin(), pairs_.end(), [&](const Pair& pair) {
        if (!before(pair.a, look) || !before(pair.b, look))
            return false;
        return std::none_of(enders_.begin(), enders_.end(), [&](std::size_t ender) {
            return before(ender, look) && before(pair.a, ender) && before(pair.b, ender);
        });
    });
}

void History::take_look(std::size_t look)
{
    if (dispute_open_before(look)) {
        if (yes(record(look).at_unit) && record(look).state)
            enders_.insert(look);
    } else {
        for (const std::size_t other : claims_)
            if (before(other, look) && !is_superseded(other, look))
                dispute_if_other(other, look);
    }
    dispute_with_concurrent(look, false);
    if (claims(look))
        claims_.push_back(look);
}

bool History::knows_all(std::size_t look, const std::set<std::size_t>& members) const
{
    return std::all_of(members.begin(), members.end(), [&](std::size_t each) { return before(each, look); });
}

bool History::is_ended(const std::set<std::size_t>& members) const
{
    return std::any_of(enders_.begin(), enders_.end(), [&](std::size_t look) { return knows_all(look, members); });
}

// Pairs that share a record are one dispute.
std::vector<std::set<std::size_t>> History::disputes() const
{
    std::vector<std::set<std::size_t>> found;
    for (const Pair& pair : pairs_) {
        std::set<std::size_t> joined{pair.a, pair.b};
        for (auto each = found.begin(); each != found.end();) {
            const bool shares = each->count(pair.a) > 0 || each->count(pair.b) > 0;
            if (shares)
                joined.insert(each->begin(), each->end());
            each = shares ? found.erase(each) : each + 1;
        }
        found.push_back(std::move(joined));
    }
    return found;
}

// Those of a sort that no other of it knows.
std::vector<std::size_t> History::newest(bool (History::*is_one)(std::size_t) const) const
{
    std::vector<std::size_t> found;
    for (const std::size_t i : order_)
        if ((this->*is_one)(i) && std::none_of(order_.begin(), order_.end(), [&](std::size_t other) {
                return (this->*is_one)(other) && before(i, other);
            }))
            found.push_back(i);
    return found;
}

void History::add_changer(Standing& standing, std::size_t change) const
{
    if (record(change).by)
        standing.changers.push_back(*record(change).by);
    else
        standing.changer_unknown = true;
    standing.changed_at = standing.change_time_unknown || !record(change).at
                              ? std::nullopt
                              : std::max(standing.changed_at, record(change).at);
    standing.change_time_unknown = standing.change_time_unknown || !record(change).at;
    for (std::size_t older = 0; older < records_.size(); ++older)
        if (before(older, change) && record(older).id)
            standing.known_to_changes.push_back(*record(older).id);
}

// "What it saw then stands, and all who made one of the changes count as changers."
void History::add_changers_behind(Standing& standing, std::size_t look) const
{
    for (const auto& members : disputes())
        if (knows_all(look, members))
            for (const std::size_t member : members)
                if (is_change(member))
                    add_changer(standing, member);
}

Standing History::standing() const
{
    Standing standing;
    standing.ever_changed = std::any_of(order_.begin(), order_.end(), [&](std::size_t i) { return is_change(i); });
    const auto all = disputes();
    standing.disputed = std::any_of(all.begin(), all.end(), [&](const auto& members) { return !is_ended(members); });
    bool said = true;
    for (const std::size_t claim : newest(&History::claims)) {
        said = said && record(claim).state;
        standing.state = said ? record(claim).state : std::nullopt;
        if (!is_change(claim))
            add_changers_behind(standing, claim);
    }
    for (const std::size_t change : newest(&History::is_change))
        add_changer(standing, change);
    return standing;
}

} // namespace

Standing standing_of(const std::vector<SettingRecord>& records)
{
    return records.empty() ? Standing{} : History{records}.standing();
}

} // namespace cotter::rules
