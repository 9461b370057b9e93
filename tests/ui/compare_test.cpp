// Typed data beside their page: a second person proves them.

#include "files.hpp"
#include "own_book.hpp"
#include "picture.hpp"

#include <doctest/doctest.h>

#include <cairo.h>
#include <turbojpeg.h>

#include <fstream>

using namespace cotter;
using cotter::tests::Folder;
using cotter::tests::OwnBook;
using cotter::tests::Rig;
using cotter::tests::SampleBook;
using records::Json;

TEST_SUITE_BEGIN("compare");

namespace {

// A page of one colour, left half black.
std::string jpeg(int width, int height)
{
    std::vector<unsigned char> rgb(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 3, 255);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width / 2 * 3; ++x)
            rgb[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) * 3 + static_cast<std::size_t>(x)] = 0;
    unsigned char* out = nullptr;
    unsigned long size = 0;
    const tjhandle pen = tjInitCompress();
    tjCompress2(pen, rgb.data(), width, 0, height, TJPF_RGB, &out, &size, TJSAMP_444, 90, 0);
    std::string bytes{reinterpret_cast<char*>(out), size};
    tjFree(out);
    tjDestroy(pen);
    return bytes;
}

std::string png(int width, int height)
{
    cairo_surface_t* page = cairo_image_surface_create(CAIRO_FORMAT_ARGB32, width, height);
    cairo_t* pen = cairo_create(page);
    cairo_set_source_rgb(pen, 0, 0, 0);
    cairo_rectangle(pen, 0, 0, width / 2.0, height);
    cairo_fill(pen);
    std::string bytes;
    cairo_surface_write_to_png_stream(
        page,
        [](void* to, const unsigned char* data, unsigned length) {
            static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(data), length);
            return CAIRO_STATUS_SUCCESS;
        },
        &bytes);
    cairo_destroy(pen);
    cairo_surface_destroy(page);
    return bytes;
}

int red_at(const ui::Picture& picture, double x, double y)
{
    const auto column = static_cast<std::size_t>(x * picture.width), row = static_cast<std::size_t>(y * picture.height);
    return picture.rgba[(row * static_cast<std::size_t>(picture.width) + column) * 4];
}

} // namespace

TEST_CASE("a JPEG and a PNG are read as they look, scaled down to 2,048 a side")
{
    for (const std::string& bytes : {jpeg(300, 200), png(300, 200), jpeg(5000, 3000), png(5000, 3000)}) {
        const auto picture = ui::decode(bytes);
        REQUIRE(picture);
        CHECK(std::max(picture->width, picture->height) <= 2048);
        CHECK(std::abs(picture->width * 1.0 / picture->height - (picture->height > 250 ? 5.0 / 3 : 1.5)) < 0.01);
        CHECK(red_at(*picture, 0.25, 0.5) < 20);
        CHECK(red_at(*picture, 0.75, 0.5) > 235);
    }
}

TEST_CASE("what is no picture, is cut off or claims to be too large is none")
{
    const std::string whole = png(300, 200), photo = jpeg(300, 200);
    std::string vast = whole;
    vast[16] = 0x7F;
    for (const std::string& bytes : {std::string{}, std::string{"%PDF-1.4"}, whole.substr(0, 60), vast,
                                     whole.substr(0, 8), photo.substr(0, photo.size() / 2), photo.substr(0, 3)})
        CHECK_FALSE(ui::decode(bytes));
}

TEST_CASE("what was typed is compared beside its page by another, with a PIN of the own, and is proved then")
{
    OwnBook book;
    book.staff();
    REQUIRE(book.store().fact("pipe", "p")->doc["compared"].empty());
    Rig rig{book.store(), ui::Door::site};
    rig.tap("Compare");
    CHECK(rig.shows("typed by hallam, no picture"));
    rig.tap("DN 450 (invented)");
    CHECK_FALSE(rig.target("hallam")); // who typed it
    rig.tap("iqbal");
    tests::type(rig, tests::iqbals);
    CHECK(rig.shows("Compare with the page itself"));
    CHECK(rig.shows("name"));
    rig.tap("Not alike");
    CHECK(rig.shows("It stays unproved"));
    rig.tap("Understood");
    CHECK(book.store().fact("pipe", "p")->doc["compared"].empty());
    rig.tap("DN 450 (invented)");
    rig.tap("iqbal");
    tests::type(rig, tests::iqbals);
    rig.tap("All alike");
    CHECK(book.newest("compared").how == "pin");
    CHECK(book.store().fact("pipe", "p")->doc["compared"].size() == 1);
    CHECK_FALSE(rig.target("DN 450 (invented)"));
}

TEST_CASE("a signature that was given for one thing does not wait for ever for somebody else's touch")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::site};
    rig.tap("Compare");
    rig.tap("DN 450 (invented)");
    rig.tap("iqbal");
    tests::type(rig, tests::iqbals);
    CHECK(rig.shows("Compare with the page itself"));
    rig.ticks += 3600;
    rig.frame();
    CHECK(rig.shows("Locked. iqbal: your PIN"));
    CHECK_FALSE(rig.target("All alike"));
    tests::type(rig, tests::iqbals);
    rig.tap("All alike");
    CHECK(book.newest("compared").how == "pin");
}

TEST_CASE("the page of a thing is kept beside the book by its SHA-256, shown, and found again")
{
    SampleBook sample;
    const Folder folder;
    const auto file = folder.path() / "note.jpg";
    std::ofstream{file, std::ios::binary} << jpeg(600, 800);
    const db::Files files{sample.path()};
    const std::string name = files.keep(file);
    CHECK(files.keep(file) == name);
    desk::Hand hand;
    hand.by = "quill";
    hand.at = *desk::parse_instant("2026-11-25T07:30:00Z");
    hand.day = rules::utc_day(hand.at);
    Json pipe = records::find_kind("pipe")->schema["examples"][0];
    pipe["name"] = "DN 525 (invented)";
    desk::write(sample.store(),
                {entry(hand, "pipe", "new", pipe), show_page(hand, "pipe", "new", name, "delivery note")});
    Rig rig{sample.store(), ui::Door::site, {}, {}, [&](const std::string& of) { return files.read(of); }};
    rig.tap("Compare");
    rig.tap("DN 525 (invented)");
    CHECK_FALSE(rig.target("J. Quill (invented)"));
    rig.tap("O. Hallam (invented)");
    CHECK(rig.shows("picture"));
    CHECK(rig.shows("450 mm")); // the bore, from the example
    rig.tap("Larger");
    rig.tap("All alike");
    CHECK(sample.store().fact("pipe", "new")->doc["compared"].size() == 1);
}

TEST_CASE("a file that is no picture is not kept, and one whose bytes are others is not read")
{
    const Folder folder;
    const auto file = folder.path() / "note.jpg";
    const db::Files files{folder.path() / "book.db"};
    CHECK_THROWS(files.keep(file));
    std::ofstream{file} << "no picture";
    CHECK_THROWS(files.keep(file));
    CHECK_FALSE(std::filesystem::exists(folder.path() / "book.db.files"));
    std::ofstream{file, std::ios::binary} << png(30, 20);
    const std::string name = files.keep(file);
    REQUIRE(files.read(name));
    std::ofstream{folder.path() / "book.db.files" / name, std::ios::app} << "x";
    CHECK_FALSE(files.read(name));
    CHECK(files.look_at({name}).changed.size() == 1);
    std::filesystem::remove(folder.path() / "book.db.files" / name);
    CHECK(files.look_at({name}).missing.size() == 1);
    CHECK_FALSE(files.read("../book.db"));
}

TEST_SUITE_END();
