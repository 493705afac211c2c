package pairwright.session.allocation;

import java.util.Set;

/**
 * Feeds that one channel serves as well as another.
 *
 * @param drawTenthMa 0 for all where no supply of the problem can be too small
 */
record FeedKind(Set<String> groups, PhantomNeed phantom, int drawTenthMa) {
    static FeedKind of(Feed feed, BankClasses classes) {
        return new FeedKind(feed.groups(), feed.phantom(), classes.currentMatters() ? feed.drawTenthMa() : 0);
    }
}
