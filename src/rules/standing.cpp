#include "standing.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <unordered_map>

namespace cotter::rules {

namespace {

// The records as a graph: past[i][j] says that record i reaches record j through `after`.
class History {
public:
    explicit History(const std::vector<SettingRecord>& records) : records_{records}
    {
        order_by_time();
        const std::size_t n = records_.size();
        past_.assign(n, std::vector<bool>(n, false));
        for (std::size_t i = 0; i < n; ++i)
            if (records_[i].id)
                place_[*records_[i].id] = i;
        for (std::size_t i = 0; i < n; ++i)
            walk(i, i);
        order_by_knowledge();
        find_disputes();
    }

    Standing standing() const;

private:
    struct Pair { std::size_t a, b; };

    void order_by_time();
    void walk(std::size_t from, std::size_t at);
    void order_by_knowledge();
    void find_disputes();
    void take_change(std::size_t change);
    void take_look(std::size_t look);
    bool dispute_open_before(std::size_t look) const;
    void dispute_with_concurrent(std::size_t record, bool with_looks);
    void dispute_if_other(std::size_t a, std::size_t b);
    bool is_superseded(std::size_t claim, std::size_t within) const;
    bool is_change(std::size_t i) const { return records_[i].kind == SettingKind::changed; }
    bool is_look(std::size_t i) const { return records_[i].kind == SettingKind::seen && records_[i].state; }
    bool claims(std::size_t i) const { return is_change(i) || enders_.count(i) > 0; }
    bool before(std::size_t older, std::size_t newer) const { return past_[newer][older]; }
    bool knows_all(std::size_t look, const std::set<std::size_t>& members) const;
    bool is_ended(const std::set<std::size_t>& members) const;
    std::vector<std::set<std::size_t>> disputes() const;
    std::vector<std::size_t> newest(bool (History::*is_one)(std::size_t) const) const;
    void add_changer(Standing& standing, std::size_t change) const;
    void add_changers_behind(Standing& standing, std::size_t look) const;

    std::vector<SettingRecord> records_;
    std::vector<std::vector<bool>> past_;
    std::unordered_map<Id, std::size_t> place_;
    std::vector<std::size_t> order_; // what a record knows comes before it
    std::vector<Pair> pairs_;        // that say different states
    std::set<std::size_t> enders_;   // looks at the unit that knew of a dispute
};

void History::order_by_time()
{
    std::sort(records_.begin(), records_.end(), [](const SettingRecord& a, const SettingRecord& b) {
        return std::tie(a.at, a.id) < std::tie(b.at, b.id);
    });
}

void History::walk(std::size_t from, std::size_t at)
{
    for (const Id& id : records_[at].after) {
        const auto found = place_.find(id);
        if (found == place_.end() || past_[from][found->second])
            continue;
        past_[from][found->second] = true;
        walk(from, found->second);
    }
}

void History::order_by_knowledge()
{
    order_.resize(records_.size());
    std::iota(order_.begin(), order_.end(), 0U);
    const auto known = [&](std::size_t i) { return std::count(past_[i].begin(), past_[i].end(), true); };
    std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) { return known(a) < known(b); });
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
    if (records_[a].state != records_[b].state)
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
}

bool History::is_superseded(std::size_t claim, std::size_t within) const
{
    for (const std::size_t other : order_)
        if (claims(other) && before(other, within) && before(claim, other))
            return true;
    return false;
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
        if (yes(records_[look].at_unit) && records_[look].state)
            enders_.insert(look);
    } else {
        for (const std::size_t other : order_)
            if (claims(other) && before(other, look) && !is_superseded(other, look))
                dispute_if_other(other, look);
    }
    dispute_with_concurrent(look, false);
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
    if (records_[change].by)
        standing.changers.insert(*records_[change].by);
    else
        standing.changer_unknown = true;
    standing.changed_at = standing.change_time_unknown || !records_[change].at
                              ? std::nullopt
                              : std::max(standing.changed_at, records_[change].at);
    standing.change_time_unknown = standing.change_time_unknown || !records_[change].at;
    for (std::size_t older = 0; older < records_.size(); ++older)
        if (before(older, change) && records_[older].id)
            standing.known_to_changes.insert(*records_[older].id);
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
        said = said && records_[claim].state;
        standing.state = said ? records_[claim].state : std::nullopt;
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
