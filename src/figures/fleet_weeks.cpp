#include "fleet_weeks.hpp"

#include <algorithm>

namespace cotter::figures {

namespace {

constexpr double staff = 34, above_weeks = 9, text_mm = 17, least_column = 30, tick_high = 1.8;

class WeeksDrawing {
public:
    WeeksDrawing(const std::vector<std::string>& headings, const std::vector<FleetWeek>& weeks, double width,
                 double height)
        : headings_{headings}, weeks_{weeks}, figure_{width, height, {}},
          column_{(width - staff) / static_cast<double>(std::max<std::size_t>(headings.size(), 1))},
          row_{(height - above_weeks - 2) / static_cast<double>(std::max<std::size_t>(weeks.size(), 1))}
    {
    }

    Figure drawn()
    {
        figure_.add(Line{{0, above_weeks}, {figure_.width, above_weeks}, Pen::thick});
        figure_.add(Line{{staff, 0}, {staff, figure_.height}, Pen::thick});
        for (std::size_t i = 0; i < headings_.size(); ++i)
            figure_.add(Label{{x_of(i) + 3, capital + 2}, headings_[i], Align::left, capital, false});
        for (std::size_t i = 0; i < weeks_.size(); ++i)
            draw(weeks_[i], above_weeks + (static_cast<double>(i) + 0.5) * row_);
        return std::move(figure_);
    }

private:
    double x_of(std::size_t column) const { return staff + static_cast<double>(column) * column_; }

    int greatest(std::size_t column) const
    {
        int most = 1;
        for (const FleetWeek& each : weeks_)
            if (column < each.cells.size())
                most = std::max({most, each.cells[column].wanted, each.cells[column].in_date});
        return most;
    }

    void draw(const FleetWeek& week, double y)
    {
        figure_.add(Line{{staff - 2, y}, {staff, y}, Pen::thin});
        figure_.add(Label{{staff - 4, y + capital / 2}, week.week, Align::right, capital});
        if (week.is_short)
            figure_.add(Mark{{4, y}, std::min(6.0, row_ - 0.6), Sign::warning});
        for (std::size_t i = 0; i < week.cells.size() && i < headings_.size(); ++i)
            draw(week.cells[i], x_of(i) + 3, y, (column_ - text_mm - 6) / greatest(i));
    }

    // The arrow is what is wanted, the thick tick what is in date.
    void draw(const FleetCell& cell, double x, double y, double unit)
    {
        if (cell.wanted > 0)
            figure_.add(Arrow{{x, y}, {x + cell.wanted * unit, y}});
        const double limit = x + cell.in_date * unit;
        figure_.add(Line{{limit, y - tick_high}, {limit, y + tick_high}, Pen::thick});
        figure_.add(Label{{x + column_ - 6, y + capital / 2}, cell.text, Align::right, capital});
    }

    const std::vector<std::string>& headings_;
    const std::vector<FleetWeek>& weeks_;
    Figure figure_;
    double column_, row_;
};

} // namespace

std::size_t fleet_columns_that_fit(double width)
{
    return static_cast<std::size_t>(std::max(1.0, (width - staff) / least_column));
}

Figure fleet_weeks(const std::vector<std::string>& headings, const std::vector<FleetWeek>& weeks, double width,
                   double height)
{
    return WeeksDrawing{headings, weeks, width, height}.drawn();
}

} // namespace cotter::figures
