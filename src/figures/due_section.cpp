#include "due_section.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace cotter::figures {

namespace {

constexpr int columns = 3;
constexpr double row_mm = 7.4, label_capital = 3.5, top = 8, narrow_width = 170;
constexpr std::array<const char*, columns> headings{"Attachments, headplates", "Slings, hooks", "Machines, hitches"};
constexpr std::array<const char*, columns> short_headings{"Attachments", "Slings", "Machines"};

std::string without_weekday(const std::string& date) // "Fri 4 Dec"
{
    return date.substr(date.find(' ') + 1);
}

class Drawing {
public:
    Drawing(const std::vector<DueMark>& marks, rules::Day today, double width, double height, const DueReading& reading)
        : marks_{marks}, today_{today}, reading_{reading}, section_{{width, height, {}}, 0}
    {
        narrow_ = width < narrow_width;
        staff_ = narrow_ ? 23 : 30;
        ground_ = top + std::max(1.0, static_cast<double>(most_above())) * row_mm + 2;
        week_ = (height - ground_ - 3) / reading.weeks;
        column_ = (width - staff_) / columns;
    }

    DueSection drawn()
    {
        add_ground();
        add_staff();
        for (int i = 0; i < columns; ++i) {
            const auto& words = narrow_ ? short_headings : headings;
            section_.figure.add(
                Label{{x_of(i) + 8, capital + 2}, words[static_cast<std::size_t>(i)], Align::left, capital, false});
            add_above(i);
            add_below(i);
        }
        add_leaders();
        add_left_out();
        return std::move(section_);
    }

private:
    bool is_above(const DueMark& mark) const { return !mark.latest || *mark.latest < today_; }
    double x_of(int column) const { return staff_ + column_ * column; }
    double depth(rules::Day day) const
    {
        return ground_ + static_cast<double>(rules::days_between(today_, day).count()) / 7 * week_;
    }

    long most_above() const
    {
        long most = 0;
        for (int i = 0; i < columns; ++i)
            most = std::max(most, static_cast<long>(std::count_if(marks_.begin(), marks_.end(), [&](const DueMark& m) {
                                return m.column == i && is_above(m);
                            })));
        return std::min(most, 3L);
    }

    void add_ground()
    {
        Figure& f = section_.figure;
        f.add(Line{{0, ground_}, {f.width, ground_}, Pen::thick});
        for (double x = 2; x < f.width; x += 4)
            f.add(Line{{x, ground_ + 2.2}, {x + 2.2, ground_}, Pen::thin});
        f.add(Line{{staff_, 0}, {staff_, f.height}, Pen::thick});
        const std::string today = reading_.name_of(today_);
        f.add(Label{{staff_ - 3, ground_ - 2}, narrow_ ? without_weekday(today) : today, Align::right, capital});
    }

    // Weeks from Monday.
    void add_staff()
    {
        const auto weekday = date::weekday{today_}.iso_encoding();
        const rules::Day first = rules::add_days(today_, rules::Days{static_cast<std::int64_t>(8 - weekday)});
        const int every = std::max(1, static_cast<int>(std::ceil((capital + 1.4) / week_)));
        for (int week = 0; week < reading_.weeks; week += every) {
            const rules::Day day = rules::add_days(first, rules::Days{week * 7});
            const double y = depth(day);
            if (y > section_.figure.height - 3 || y < ground_ + 4)
                continue;
            section_.figure.add(Line{{staff_ - 2, y}, {staff_, y}, Pen::thin});
            section_.figure.add(
                Label{{staff_ - 4, y + 1.4}, without_weekday(reading_.name_of(day)), Align::right, capital});
        }
    }

    void add_mark(const DueMark& mark, double y)
    {
        const double x = x_of(mark.column) + 8;
        if (mark.sign)
            section_.figure.add(Mark{{x - 4, y - 1.6}, 6, *mark.sign});
        section_.figure.add(Label{{x, y}, mark.label, Align::left, label_capital, false});
        const double gap = narrow_ ? 15 : std::max(17.0, text_width(mark.label, label_capital) * 0.85 + 2);
        section_.figure.add(Label{{x + gap, y}, mark.date, Align::left, capital});
        if (mark.latest && !is_above(mark))
            placed_.push_back({mark.column, depth(*mark.latest), y - 1.4, mark.sign.has_value()});
    }

    std::vector<DueMark> in_column(int column, bool above) const
    {
        std::vector<DueMark> found;
        for (const DueMark& each : marks_)
            if (each.column == column && is_above(each) == above)
                found.push_back(each);
        std::stable_sort(found.begin(), found.end(),
                         [](const DueMark& a, const DueMark& b) { return a.latest < b.latest; });
        return found;
    }

    void add_above(int column)
    {
        const auto marks = in_column(column, true);
        double y = ground_ - 3;
        for (const DueMark& each : marks) {
            if (y < top + 4) {
                ++section_.left_out;
                continue;
            }
            add_mark(each, y);
            y -= row_mm;
        }
    }

    // Each hangs at its date, or as near below as its neighbours leave room; the leader keeps left of the labels.
    void add_below(int column)
    {
        double free = ground_ + row_mm - 1;
        for (const DueMark& each : in_column(column, false)) {
            const double at = depth(*each.latest);
            const double y = std::max(at + 1.4, free);
            if (y > section_.figure.height - 8) {
                ++section_.left_out;
                continue;
            }
            add_mark(each, y);
            free = y + row_mm;
        }
    }

    struct Placed {
        int column;
        double at, label;
        bool sign;
    };

    // A label of a column further left lies at that depth.
    bool crosses(const Placed& leader, double y) const
    {
        return std::any_of(placed_.begin(), placed_.end(), [&](const Placed& other) {
            return other.column < leader.column && std::abs(other.label - y) < row_mm / 2;
        });
    }

    // From the staff to the label, level and then to it; where another label is in the way only its end is drawn.
    void add_leaders()
    {
        Figure& f = section_.figure;
        for (const Placed& each : placed_) {
            const double end = x_of(each.column) + (each.sign ? 0.5 : 6);
            f.add(Line{{staff_ - 1, each.at}, {staff_ + 1.5, each.at}, Pen::thick});
            if (!crosses(each, each.at) && !crosses(each, each.label)) {
                f.add(Line{{staff_, each.at}, {std::max(staff_, end - 5), each.at}, Pen::thin});
                f.add(Line{{std::max(staff_, end - 5), each.at}, {end, each.label}, Pen::thin});
            } else
                f.add(Line{{end - 4, each.label}, {end, each.label}, Pen::thin});
        }
    }

    void add_left_out()
    {
        if (section_.left_out > 0)
            section_.figure.add(Label{{section_.figure.width - 3, section_.figure.height - 2.4},
                                      reading_.left_out(section_.left_out),
                                      Align::right,
                                      capital,
                                      false});
    }

    const std::vector<DueMark>& marks_;
    rules::Day today_;
    const DueReading& reading_;
    bool narrow_ = false;
    double staff_ = 30;
    std::vector<Placed> placed_;
    DueSection section_;
    double ground_ = 0, week_ = 0, column_ = 0;
};

} // namespace

DueSection due_section(const std::vector<DueMark>& marks, rules::Day today, double width, double height,
                       const DueReading& reading)
{
    return Drawing{marks, today, width, height, reading}.drawn();
}

} // namespace cotter::figures
