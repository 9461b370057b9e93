#include "daily_backup.hpp"

#include "files.hpp"
#include "language.hpp"
#include "register.hpp"
#include "store_error.hpp"

#include <algorithm>
#include <vector>

namespace cotter::cli {

namespace fs = std::filesystem;
using words::say;

namespace {

const std::string ending = ".backup";

// Of this device alone: others may use the same stick.
std::string beginning(const db::Store& store) { return "cotter-" + store.state().device.substr(0, 12) + "-"; }

std::vector<fs::path> copies_in(const fs::path& folder, const std::string& begins)
{
    std::vector<fs::path> copies;
    for (const auto& each : fs::directory_iterator{folder})
        if (const std::string name = each.path().filename().string();
            name.starts_with(begins) && name.ends_with(ending))
            copies.push_back(each.path());
    std::sort(copies.begin(), copies.end()); // a name holds the day
    return copies;
}

void let_go_of_the_oldest(const fs::path& folder, const std::string& begins, std::size_t keep)
{
    auto copies = copies_in(folder, begins);
    for (std::size_t i = 0; copies.size() - i > keep; ++i)
        fs::remove(copies[i]);
}

struct Place {
    std::string folder; // "": none is named
    fs::path copy;      // of today
    std::size_t keep = 0;
};

Place place_of(const Session& session, const db::Store& store)
{
    const auto named = desk::doc(store, "backup_place", store.state().device);
    const std::string folder = named.value("folder", "");
    return {folder, fs::path{folder} / (beginning(store) + rules::to_string(session.day()) + ending),
            static_cast<std::size_t>(named.value("keep", std::int64_t{7}))};
}

constexpr const char* again = "It stops no lift. The next stand-down, or a new day's start, makes one";
constexpr const char* put_in = "It stops no lift. Put the stick in, or have another place named";

// The book's own copy is there already.
NotCopied copy_pictures(const std::string& path, const fs::path& to, const records::Watch& watch)
try {
    db::Files{path}.copy_to(to, watch);
    return {};
} catch (const db::StoppedError&) {
    return {say("Today's copy lacks pictures: it was ended here"), say(again)};
}

} // namespace

bool is_backed_up_today(const Session& session, const db::Store& store)
{
    const Place place = place_of(session, store);
    std::error_code failed;
    return place.folder.empty() || fs::exists(place.copy, failed);
}

NotCopied back_up_today(const Session& session, const db::Store& store, const std::string& path,
                        const records::Watch& watch)
try {
    const Place place = place_of(session, store);
    if (place.folder.empty())
        return {};
    if (!fs::is_directory(place.folder))
        return {say("No copy today: {} is not there", place.folder), say(put_in)};
    const fs::path newer = place.copy.string() + ".newer"; // today's copy of the morning lacks the shift
    fs::remove(newer);
    store.back_up(newer, watch);
    fs::rename(newer, place.copy);
    let_go_of_the_oldest(place.folder, beginning(store), place.keep);
    return copy_pictures(path, fs::path{place.folder} / (beginning(store) + "pictures"), watch);
} catch (const db::StoppedError&) {
    return {say(is_backed_up_today(session, store) ? "The newer copy of today was ended here; the older one stands"
                                                   : "No copy today: it was ended here"),
            say(again)};
} catch (const std::exception& e) {
    return {say("No copy today: {}", std::string{e.what()}), say(put_in)};
}

} // namespace cotter::cli
