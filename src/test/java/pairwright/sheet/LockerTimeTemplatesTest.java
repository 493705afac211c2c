package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import pairwright.drawing.Reader;
import pairwright.locker.Role;
import pairwright.sheet.ReadingParts.Link;

/** What the templates make of the records they are given. */
class LockerTimeTemplatesTest {
    private static final AtLocker AT = new AtLocker(new Html(new Assets(), true), null, null, new Visit("/locker/month", Map.of(), Reader.METRIC), Role.READER,
            Clock.fixed(Instant.parse("2027-03-10T09:00:00Z"), ZoneOffset.UTC));

    @Test
    void everyNumberOfAMonthHasAHeadingForItsTypeAndItsDay() {
        MonthPage.Month month = new MonthPage.Month("March 2027", "", new Link("/a", "February 2027"), new Link("/b", "April 2027"),
                List.of(new MonthPage.Day(new Link("/locker/bookings?from=2027-03-01&until=2027-03-01", "1"), "Monday", "Mo", "", true),
                        new MonthPage.Day(new Link("/locker/bookings?from=2027-03-06&until=2027-03-06", "6"), "Saturday", "Sa", "weekend", false)),
                List.of(new MonthPage.Row("<Ribbon>", null, "2", List.of(new MonthPage.Cell("2", "all"), new MonthPage.Cell("0", "none")))), null);
        Document page = Jsoup.parse(AT.page("month", AT.frame("Taken in March 2027", "month"), "month", month).content());
        assertEquals(page.select("thead th").size(), page.select("col").size(), "a column each, so that a weekend is marked all the way down");
        assertEquals(List.of(3), page.select("col.weekend").stream().map(Element::elementSiblingIndex).toList());
        assertEquals("1", page.select("thead th[aria-current=date] a").first().ownText(), "today");
        Element none = page.selectFirst("td.day.none");
        assertEquals("0\u00b7", none.text());
        none.select("[aria-hidden]").remove();
        assertEquals("0", none.text(), "nothing taken is a faint dot to the eye and a number to the ear");
        page.select("[aria-hidden]").remove();
        assertEquals(List.of("Type", "Units", "Monday 1", "Saturday 6"), page.select("table.heat thead th[scope=col]").eachText());
        assertEquals("<Ribbon>", page.select("table.heat tbody th[scope=row]").text());
        assertEquals("2", page.select("td.day.all").text());
        assertEquals(1, page.select(".scroll[tabindex=0][role=region][aria-label]").size());
        assertEquals(1, page.select("h1").size());
    }

    @Test
    void aBookingSaysWhenWhatForByWhomAndWhichUnits() {
        BookingsPage.Line take = new BookingsPage.Line(new Link("/locker/bookings/7", "10:00 to 12:00"), "Session", "Barn take", "Ada",
                List.of(new BookingsPage.Named("/locker/units/ribbon-1", "Ribbon 1"), new BookingsPage.Named(null, "Left long ago")), 3);
        BookingsPage.Line loan = new BookingsPage.Line(new Link("/locker/bookings/8", "since Mon 1 Mar 2027, 10:00, until tomorrow 9:00"), "Loan", "", "Ben", List.of(), 0);
        BookingsPage.Bookings bookings = new BookingsPage.Bookings("2027-03-10", "2027-03-24", "", List.of(), "Overdue: Ribbon 1.",
                List.of(new BookingsPage.Day("today", List.of(take), List.of(loan))), "", null, null);
        Document page = Jsoup.parse(AT.page("bookings", AT.frame("Bookings", "bookings"), "bookings", bookings).content());
        assertEquals(List.of("Session", "Barn take", "Ada", "Ribbon 1, Left long ago and 3 more"), page.select("tbody td").eachText());
        assertEquals(List.of("/locker/bookings/7", "/locker/units/ribbon-1"), page.select("tbody a").eachAttr("href"), "what has left leads nowhere");
        assertEquals("Loan, by Ben, since Mon 1 Mar 2027, 10:00, until tomorrow 9:00", page.select("ul.goes-on li").text());
        page.select("form.search input:not([type=hidden])").forEach(input -> assertEquals(1, page.select("label[for=" + input.id() + "]").size(), input.id()));
        assertEquals("Times are in UTC.", page.select(".zone").text());
    }
}
