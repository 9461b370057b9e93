"""Days of the sample site, and British time without a zone database."""

from datetime import date, datetime, timedelta


def parse(text):
    """A day written YYYY-MM-DD, or None."""
    try:
        day = datetime.strptime(text, "%Y-%m-%d").date()
    except ValueError:
        return None
    return day if text == day.isoformat() else None


def working_days(today, weeks):
    """Mondays to Fridays of so many weeks before today, and today itself, whatever day it is."""
    before = (today - timedelta(days=n) for n in range(7 * weeks, 0, -1))
    return [day for day in before if day.weekday() < 5] + [today]


def last_sunday(year, month):
    day = date(year, month, 31)
    return day - timedelta(days=(day.weekday() + 1) % 7)


def at(day, clock):
    """The instant of a clock time "HH:MM" or "HH:MM:SS" in Britain on that day, as UTC."""
    summer = last_sunday(day.year, 3) <= day < last_sunday(day.year, 10)
    parts = [int(part) for part in clock.split(":")]
    local = datetime(day.year, day.month, day.day, *parts)
    return local - timedelta(hours=1 if summer else 0)


def instant(moment):
    return moment.strftime("%Y-%m-%dT%H:%M:%SZ")


def seconds(moment):
    return int((moment - datetime(1970, 1, 1)).total_seconds())


def later_by_months(day, months):
    """The corresponding date; the month's last day where there is none."""
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    following = date(year + (month + 1) // 12, (month + 1) % 12 + 1, 1)
    return date(year, month + 1, min(day.day, (following - timedelta(days=1)).day))


def examined_for(latest, months):
    """The first day whose examination holds until that last day of use."""
    day = later_by_months(latest, -months)
    while later_by_months(day, months) < latest:
        day += timedelta(days=1)
    return day
