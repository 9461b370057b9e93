#include "daily_backup.hpp"

#include "files.hpp"
#include "register.hpp"

#include <algorithm>
#include <vector>

namespace cotter::cli {

namespace fs = std::filesystem;

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

} // namespace

std::string back_up_today(const Session& session, const db::Store& store, const std::string& path,
                          const records::Watch& watch)
try {
    const auto place = desk::doc(store, "backup_place", store.state().device);
    const std::string folder = place.value("folder", "");
    if (folder.empty())
        return "";
    if (!fs::is_directory(folder))
        return "No copy today: " + folder + " is not there";
    const fs::path copy = fs::path{folder} / (beginning(store) + rules::to_string(session.day()) + ending);
    const fs::path newer = copy.string() + ".newer"; // today's copy of the morning lacks the shift
    fs::remove(newer);
    store.back_up(newer, watch);
    fs::rename(newer, copy);
    db::Files{path}.copy_to(fs::path{folder} / (beginning(store) + "pictures"));
    let_go_of_the_oldest(folder, beginning(store), static_cast<std::size_t>(place.value("keep", std::int64_t{7})));
    return "";
} catch (const std::exception& e) {
    return std::string{"No copy today: "} + e.what();
}

} // namespace cotter::cli
