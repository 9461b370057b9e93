#include "theme.hpp"

#include <cmath>
#include <filesystem>
#include <stdexcept>

namespace cotter::ui {

namespace {

constexpr const char* noto = "/usr/share/fonts/truetype/noto/";
constexpr const char* lettering = "/usr/share/fonts/truetype/osifont/osifont.ttf";

// Latin with Polish and Romanian letters, and the punctuation that texts use; the verdict has capitals only.
constexpr ImWchar texts[] = {0x0020, 0x007E, 0x00A0, 0x017F, 0x0218, 0x021B, 0x2009, 0x200A, 0x2013,
                             0x2014, 0x2018, 0x201E, 0x2022, 0x2022, 0x2026, 0x2026, 0};
constexpr ImWchar capitals[] = {0x0020, 0x0020, 0x0041, 0x005A, 0x00C2, 0x00C2, 0x00CE, 0x00CE,
                                0x00D3, 0x00D3, 0x0102, 0x0107, 0x0118, 0x0118, 0x0141, 0x0143,
                                0x015A, 0x015A, 0x0179, 0x017B, 0x0218, 0x021A, 0};
constexpr ImWchar signs[] = {0x2190, 0x2193, 0x2212, 0x2212, 0x2248, 0x2248, 0x2264, 0x2265, 0};
constexpr ImWchar ellipsis[] = {0x2018, 0x201E, 0x2026, 0x2026, 0}; // and quotation marks
constexpr ImWchar ticks[] = {0x2713, 0x2713, 0x2717, 0x2717, 0};

struct Source {
    std::string file;
    const ImWchar* characters;
};

Source main_source(Letter letter)
{
    switch (letter) {
    case Letter::verdict: return {std::string{noto} + "NotoSans-Bold.ttf", capitals};
    case Letter::heading:
    case Letter::bold: return {std::string{noto} + "NotoSans-Bold.ttf", texts};
    case Letter::drawing: return {lettering, texts};
    case Letter::text:
    case Letter::second:
    case Letter::small: return {std::string{noto} + "NotoSans-Regular.ttf", texts};
    }
    return {};
}

ImFont* add_font(const Source& source, float size, bool merged)
{
    if (!std::filesystem::exists(source.file))
        throw std::runtime_error{source.file +
                                 ": this font is missing; Debian's fonts-noto-core and fonts-osifont have it"};
    ImFontConfig config;
    config.MergeMode = merged;
    config.OversampleH = config.OversampleV = 1;
    config.PixelSnapH = true;
    return ImGui::GetIO().Fonts->AddFontFromFileTTF(source.file.c_str(), size, &config, source.characters);
}

// The part of a line's height that a capital takes, measured on a font made for the purpose.
float capital_share(const std::string& file)
{
    constexpr float size = 100;
    static const ImWchar only[] = {'H', 'H', 0};
    ImFontAtlas atlas;
    ImFont* probe = atlas.AddFontFromFileTTF(file.c_str(), size, nullptr, only);
    atlas.Build();
    const ImFontGlyph* glyph = probe->FindGlyph('H');
    return (glyph->Y1 - glyph->Y0) / size;
}

} // namespace

const Colours& colours() { return looks().night ? night_sheet : day_sheet; }
bool is_night() { return looks().night; }

namespace {

bool gloves_are_worn = false;

} // namespace

const Hand& at_desk() { return looks().gloves || gloves_are_worn ? glove : bare; }

InGloves::InGloves(bool are_worn) : before_{gloves_are_worn} { gloves_are_worn = gloves_are_worn || are_worn; }
InGloves::~InGloves() { gloves_are_worn = before_; }

namespace {

bool grows(Lettering of)
{
    return !of.plain && of.letter != Letter::verdict && of.letter != Letter::drawing && of.letter != Letter::small &&
           looks().text_percent != 100;
}

} // namespace

double capital_mm(Lettering of) { return plain_capital_mm(of.letter) * (grows(of) ? looks().text_percent : 100) / 100; }

Theme::Theme(double px_per_mm) : px_per_mm_{px_per_mm}, text_percent_{looks().text_percent}
{
    ImFontAtlas* atlas = ImGui::GetIO().Fonts;
    atlas->TexDesiredWidth = 4096;
    load(plain_, true);
    chosen_ = plain_;
    load(chosen_, false);
    atlas->Build();
    for (auto* faces : {&plain_, &chosen_})
        for (Face& face : *faces) {
            const ImFontGlyph* glyph = face.font->FindGlyph('H');
            face.capital_top = glyph->Y0;
            face.capital = glyph->Y1 - glyph->Y0;
        }
}

// What does not grow is loaded once.
void Theme::load(std::array<Face, letters>& faces, bool plain) const
{
    for (std::size_t i = 0; i < letters; ++i) {
        const Lettering of{static_cast<Letter>(i), plain};
        if (!plain && !grows(of))
            continue;
        const Source source = main_source(of.letter);
        if (!std::filesystem::exists(source.file))
            add_font(source, 1, false); // says which is missing
        const float size = std::round(px(capital_mm(of)) / capital_share(source.file));
        faces[i].font = add_font(source, size, false);
        if (of.letter == Letter::verdict)
            continue;
        add_font({std::string{noto} + "NotoSansMath-Regular.ttf", signs}, size, true);
        add_font({std::string{noto} + "NotoSansSymbols2-Regular.ttf", ticks}, size, true);
        add_font({std::string{noto} + "NotoSans-Regular.ttf", ellipsis}, size, true); // the lettering has none
    }
}

std::string missing_characters(const Face& face, const std::string& text)
{
    std::string missing;
    for (const char* at = text.c_str(); *at != '\0';) {
        unsigned int character = 0;
        // UTF-8 decoding as ImGui's own text functions do it, by its public bits: lead byte, then continuation bytes.
        const auto lead = static_cast<unsigned char>(*at);
        const int length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
        character = length == 1 ? lead : lead & (0xFFU >> (length + 1));
        for (int i = 1; i < length; ++i)
            character = (character << 6U) | (static_cast<unsigned char>(at[i]) & 0x3FU);
        if (face.font->FindGlyphNoFallback(static_cast<ImWchar>(character)) == nullptr)
            missing += std::string(at, static_cast<std::size_t>(length));
        at += length;
    }
    return missing;
}

} // namespace cotter::ui
