package org.frisket.orders.compare;

import java.util.Optional;

/**
 * Something in a job that is not as it was when the job was opened.
 *
 * @param key     tells it from all others
 * @param subject what it is, for people
 * @param element the id of the element it is, if it is one
 * @param touches whether both sides have changed the same of it, or one has changed what the other has removed: it has
 *                to be chosen whose state holds
 */
public record Row(String key, String subject, Optional<String> element, Difference mine, Difference theirs,
		boolean touches) {
}
