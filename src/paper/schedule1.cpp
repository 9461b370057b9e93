#include "schedule1.hpp"

#include <algorithm>

namespace cotter::paper {

using records::Json;

namespace {

std::string text_of(const Json& body, const char* field)
{
    const auto found = body.find(field);
    if (found == body.end() || found->is_null())
        return "";
    if (found->is_boolean())
        return found->get<bool>() ? "yes" : "no";
    return found->is_string() ? found->get<std::string>() : found->dump();
}

// How a particular that has no value stands: "", or why it is missing.
std::string why_missing(const std::string& status)
{
    if (status == "given" || status == "not_applicable")
        return "";
    return status == "lacking" ? "lacking in the report" : status == "not_typed" ? "not yet typed" : "not recorded";
}

class Listing {
public:
    explicit Listing(const Json& body) : body_{body} {}

    // One that stands in the text, or of which it is said that the copy has it.
    void add(const char* paragraph, const char* words, const char* field)
    {
        const std::string value = text_of(body_, field);
        const std::string status = text_of(body_.value("particulars", Json::object()), field);
        add(paragraph, words,
            !value.empty()               ? value
            : status == "given"          ? "given in the copy, not typed here"
            : status == "not_applicable" ? "not applicable"
                                         : "",
            value.empty() ? why_missing(status) : "");
    }

    // One without which the report is none.
    void add_typed(const char* paragraph, const char* words, const std::string& value)
    {
        add(paragraph, words, value, value.empty() ? "not recorded" : "");
    }

    void add(const char* paragraph, const char* words, std::string value, std::string missing)
    {
        list_.push_back({paragraph, words, std::move(value), std::move(missing)});
    }

    std::vector<Particular> list() && { return std::move(list_); }

private:
    const Json& body_;
    std::vector<Particular> list_;
};

std::string basis_of(const Json& body)
{
    const std::string basis = text_of(body, "basis");
    return basis == "six_months"      ? "within an interval of 6 months (a)(i)"
           : basis == "twelve_months" ? "within an interval of 12 months (a)(ii)"
           : basis == "scheme"        ? "by an examination scheme (a)(iii)"
           : basis == "exceptional"   ? "after exceptional circumstances (a)(iv)"
           : basis == "installation"  ? "after installation or assembly (para. 6)"
                                      : "";
}

std::string swl_of(const Json& body)
{
    std::string text = text_of(body, "swl_kg");
    text += text.empty() ? "" : " kg";
    for (const Json& each : body.value("configurations", Json::array()))
        text += (text.empty() ? "" : "; ") + each.value("name", "") +
                (each.contains("swl_kg") ? ": " + each["swl_kg"].dump() + " kg" : "");
    return text;
}

std::string defect_text(const Json& defect)
{
    const std::string part = text_of(defect, "part"), danger = text_of(defect, "danger");
    return text_of(defect, "id") + (part.empty() ? "" : ": " + part) +
           (danger == "present"        ? ", is a danger"
            : danger == "could_become" ? ", could become a danger"
                                       : "");
}

using Defects = std::vector<Json>;

Defects defects_of(const Json& body, const char* danger)
{
    Defects found;
    for (const Json& each : body.value("defects", Json::array()))
        if (!*danger || text_of(each, "danger") == danger)
            found.push_back(each);
    return found;
}

// What is to be said of each defect; missing if one of them lacks it.
void add_of_defects(Listing& listing, const char* paragraph, const char* words, const Defects& defects,
                    const char* field)
{
    std::string value, missing;
    for (const Json& each : defects) {
        const std::string text = text_of(each, field);
        value += text.empty() ? "" : (value.empty() ? "" : "; ") + text_of(each, "id") + ": " + text;
        missing = text.empty() ? "not recorded" : missing;
    }
    if (!defects.empty())
        listing.add(paragraph, words, value, missing);
}

void add_defects(Listing& listing, const Json& body)
{
    std::string parts;
    for (const Json& each : body.value("defects", Json::array()))
        parts += (parts.empty() ? "" : "; ") + defect_text(each);
    const std::string status = text_of(body.value("particulars", Json::object()), "defect_parts");
    if (parts.empty())
        listing.add("8(a)", "parts with a defect, and the defect",
                    status == "not_applicable" ? "none"
                    : status == "given"        ? "given in the copy, not typed here"
                                               : "",
                    why_missing(status));
    else
        listing.add("8(a)", "parts with a defect, and the defect", parts, "");
    const Defects later = defects_of(body, "could_become");
    add_of_defects(listing, "8(b)", "repair, renewal or alteration required for a present danger",
                   defects_of(body, "present"), "remedy");
    add_of_defects(listing, "8(c)(i)", "time by which a defect could become a danger", later, "by_day");
    add_of_defects(listing, "8(c)(ii)", "repair, renewal or alteration required before that time", later, "remedy");
}

} // namespace

std::vector<Particular> schedule_1(const Json& body)
{
    Listing listing{body};
    listing.add("1", "name and address of the employer", "employer");
    listing.add("2", "address of the premises of the examination", "premises");
    listing.add_typed("3", "what identifies the equipment", text_of(body, "identity"));
    listing.add("3", "date of manufacture, where known", "manufactured");
    listing.add("4", "date of the last thorough examination", "last_examined");
    listing.add_typed("5", "safe working load, and of which configuration", swl_of(body));
    listing.add("6", "first after installation or assembly, and installed correctly", "installation");
    listing.add_typed("7(a)", "under which limb of reg. 9(3)(a) it was made", basis_of(body));
    listing.add_typed("7(b)", "whether it would be safe to operate", text_of(body, "safe"));
    add_defects(listing, body);
    listing.add_typed("8(d)", "latest date of the next thorough examination", text_of(body, "latest"));
    listing.add("8(e)", "particulars of any test", "tests");
    listing.add_typed("8(f)", "date of the examination", text_of(body, "examined"));
    listing.add_typed("9", "who made the report", text_of(body, "examiner"));
    listing.add("9", "address and qualifications of that person", "qualifications");
    listing.add("9", "self-employed, or name and address of the employer", "employment");
    listing.add("10", "who signs on behalf of the author", "authenticator");
    listing.add("11", "date of the report", "report_day");
    return std::move(listing).list();
}

std::string missing_of(const std::vector<Particular>& particulars)
{
    std::string text;
    for (const Particular& each : particulars)
        if (!each.missing.empty())
            text += (text.empty() ? "" : "; ") + std::string{"para. "} + each.paragraph + " " + each.words + " (" +
                    each.missing + ")";
    return text;
}

} // namespace cotter::paper
