package pairwright.http;

import pairwright.session.PurchaseDesk;
import pairwright.session.Purchased;

/**
 * What programs are told of what to buy.
 *
 * @param state computing, or ready; until it is ready there is nothing to buy
 * @param doing what is being done; null once it is ready
 * @param done steps of that
 * @param of so many; 0 where nobody knows
 * @param purchases null until it is ready
 */
public record PurchaseView(String state, String doing, int done, int of, Purchased purchases) {
    public static PurchaseView of(PurchaseDesk.State state) {
        return state.purchased() == null ? new PurchaseView("computing", state.progress().doing(), state.progress().done(), state.progress().of(), null)
                : new PurchaseView("ready", null, state.progress().of(), state.progress().of(), state.purchased());
    }
}
