// cotter, cotter cab, cotter site, cotter yard: the screens.

#include "boot_clock.hpp"
#include "command.hpp"
#include "files.hpp"
#include "local_time.hpp"
#include "long_work.hpp"
#include "looks.hpp"
#include "pages.hpp"
#include "papers_out.hpp"
#include "session.hpp"
#include "terminal.hpp"
#include "title_of_paper.hpp"
#include "window.hpp"

#include <algorithm>
#include <cctype>
#include <chrono>
#include <cmath>
#include <fstream>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, size, layout, picture, papers, photos;
    bool night = false;
    Given at{"--at", ""}, px_per_mm{"--px-per-mm", ""};
};

// The book named, or the one of this user, made if it is not there.
std::unique_ptr<db::Store> open_or_make(const std::string& given)
{
    const std::string path = store_or_own(given);
    if (std::filesystem::exists(path))
        return open_unchecked(path);
    if (!given.empty())
        throw BadInput{"--store: \"" + given +
                       "\" is not there; a book that is there is accepted, or none for your own"};
    db::Store::make(path, {"this device", false, now(), rules::utc_day(now())});
    return open_unchecked(path);
}

void read_size(const std::string& size, ui::WindowFacts& facts)
{
    const auto cross = size.find('x');
    if (size.empty())
        return;
    if (cross == std::string::npos)
        throw BadInput{"--size: \"" + size + "\" is not accepted; WxH in pixels, such as 1280x800, is"};
    facts.size_is_asked_for = true;
    facts.width = static_cast<int>(whole_between({"--size", size.substr(0, cross)}, 200, 10'000));
    facts.height = static_cast<int>(whole_between({"--size", size.substr(cross + 1)}, 200, 10'000));
}

ui::WindowFacts window_facts(const Options& options)
{
    ui::WindowFacts facts;
    read_size(options.size, facts);
    if (options.px_per_mm.is_given()) {
        facts.px_per_mm = positive(options.px_per_mm);
        if (*facts.px_per_mm < 2 || *facts.px_per_mm > 40)
            throw BadInput{"--px-per-mm: \"" + options.px_per_mm.text + "\" is not accepted; 2 to 40 is"};
    }
    facts.layout_file = options.layout;
    facts.picture_file = options.picture;
    return facts;
}

// The clock of the screens: in a sample book it runs on from --at.
class Running {
public:
    Running(Session& session, bool sample_at) : session_{session}, moves_{sample_at}, from_{session.at()} {}

    rules::Instant now() const
    {
        if (!moves_)
            return session_.at();
        const auto since = std::chrono::steady_clock::now() - start_;
        return from_ + rules::Instant{std::chrono::duration_cast<std::chrono::seconds>(since).count()};
    }

    desk::Hand hand(const std::string& by) const
    {
        session_.watch_the_clock_now();
        desk::Hand hand = session_.hand(by);
        hand.at = now();
        hand.day = desk::local_day(hand.at, desk::zone_of(session_.store(), desk::current_site(session_.store())));
        return hand;
    }

private:
    Session& session_;
    bool moves_;
    rules::Instant from_;
    std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

// This site's day as a page in the folder for papers; gives the file's name.
std::string print_day(const Options& options, const records::Book& book, rules::Instant now)
{
    const words::InEnglish on_paper;
    const std::string site = desk::current_site(book);
    const desk::SiteDay day = desk::site_day(book, site, now);
    const std::filesystem::path folder = options.papers.empty()
                                             ? std::filesystem::absolute(store_or_own(options.store)).parent_path()
                                             : std::filesystem::path{options.papers};
    std::string name = "day-" + desk::to_string(now) + ".pdf";
    name.erase(std::remove(name.begin(), name.end(), ':'), name.end()); // exFAT takes none
    const auto block = title_block(book, "This site, this day: " + rules::to_string(day.day), site, "", now);
    write_file(folder / name, paper::day_pdf(block, day, book), "--papers");
    return (folder / name).string();
}

// Night or day is the glass's, not the book's: it stands in a file beside the book.
std::filesystem::path appearance_file(const Options& options) { return store_or_own(options.store) + ".sheet"; }

ui::Looks looks_for(const Options& options)
{
    std::ifstream in{appearance_file(options)};
    ui::Looks looks = ui::read_looks({std::istreambuf_iterator<char>{in}, {}});
    looks.night = looks.night || options.night;
    return looks;
}

// In place of what was chosen before. Where it cannot be written the choice holds until the end.
void keep_looks(const Options& options, const ui::Looks& looks)
{
    const std::filesystem::path file = appearance_file(options), made = file.string() + ".new";
    std::ofstream{made} << to_text(looks);
    std::error_code failed;
    std::filesystem::rename(made, file, failed);
}

// JPEG and PNG files of the watched folder, the newest first.
std::vector<std::string> photos_in(const std::filesystem::path& folder)
{
    constexpr std::size_t enough = 60;
    std::vector<std::pair<std::filesystem::file_time_type, std::string>> found;
    std::error_code none;
    for (const auto& each : std::filesystem::directory_iterator{folder, none}) {
        std::string ending = each.path().extension().string();
        std::transform(ending.begin(), ending.end(), ending.begin(), [](unsigned char c) { return std::tolower(c); });
        if (each.is_regular_file(none) && (ending == ".jpg" || ending == ".jpeg" || ending == ".png"))
            found.emplace_back(each.last_write_time(none), each.path().string());
    }
    std::sort(found.rbegin(), found.rend());
    std::vector<std::string> names;
    for (std::size_t i = 0; i < std::min(found.size(), enough); ++i)
        names.push_back(found[i].second);
    return names;
}

ui::Photos photos_of(const Options& options, const db::Files& files)
{
    const std::filesystem::path folder =
        options.photos.empty() ? std::filesystem::path{store_or_own(options.store)}.parent_path() / "photos"
                               : std::filesystem::path{options.photos};
    return {[folder] { return photos_in(folder); }, [](const std::string& path) { return db::Files::bytes_of(path); },
            [&files](const std::string& bytes) { return files.keep_bytes(bytes); }};
}

int open_screens(const Options& options, ui::Door door)
{
    words::catalogues_in((folder_of_program() / "locale").string());
    ui::set_looks(looks_for(options));
    ui::WindowFacts facts = window_facts(options);
    if (!ui::has_display())
        throw BadInput{"no display: the screens need one; `cotter board` and `cotter lift` work in a terminal"};
    Session session{open_or_make(options.store), options.at, true};
    const Running running{session, options.at.is_given()};
    ui::Outside outside{session.store(),
                        [&] { return running.now(); },
                        [&](const std::string& by) { return running.hand(by); },
                        {},
                        [] {
                            const auto now = std::chrono::steady_clock::now().time_since_epoch();
                            return std::chrono::duration<double>(now).count();
                        }};
    const db::Files files{store_or_own(options.store)};
    outside.page = [&](const std::string& name) { return files.read(name); };
    outside.photos = photos_of(options, files);
    outside.print_day = [&] { return print_day(options, session.store(), running.now()); };
    outside.keep_looks = [&](const ui::Looks& looks) { keep_looks(options, looks); };
    LongWork work{session, store_or_own(options.store)};
    outside.receipt = [&] { // a day's end
        work.day_ends();
        return session.store().receipt(running.now());
    };
    outside.day_is_over = [&] { work.day_is_over(); };
    outside.notice = [&] { return work.notice(); };
    facts.between_frames = [&](const ui::Wait& wait) { return work.do_it(wait); };
    if (!run_window(outside, door, facts))
        throw BadInput{"no display: the screens need one; `cotter board` and `cotter lift` work in a terminal"};
    work.finish();
    return done;
}

void add_options(Command command, Options& options)
{
    command.option("--store", options.store, "the book (default your own)");
    command.option("--at", options.at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command.option("--papers", options.papers, "folder for what is printed, a stick's (default the book's)");
    command.option("--photos", options.photos, "folder that is watched for photos (default photos beside the book)");
    command.option("--px-per-mm", options.px_per_mm.text, "true size of the display");
    command.flag("--night", options.night, "open on the night sheet");
    command.option("--size", options.size, "WxH, pixels");
    command.option("--layout", options.layout, "write what stands where into this file after each frame");
    command.option("--picture", options.picture, "write the first frame into this file (PPM) and close");
}

} // namespace

void add_screens(Command app, Chosen& chosen)
{
    const std::vector<std::tuple<const char*, const char*, ui::Door>> doors{
        {"cab", "The plant operator's screens", ui::Door::cab},
        {"site", "The site's screens", ui::Door::site},
        {"yard", "The hire desk's screens", ui::Door::yard}};
    for (const auto& [name, says, door] : doors) {
        auto options = std::make_shared<Options>();
        auto command = app.subcommand(name, says);
        add_options(command, *options);
        command.callback(
            [options, door = door, &chosen] { chosen = [options, door] { return open_screens(*options, door); }; });
    }
    auto options = std::make_shared<Options>();
    add_options(app, *options);
    chosen = [options] { return open_screens(*options, ui::Door::none); };
}

} // namespace cotter::cli
