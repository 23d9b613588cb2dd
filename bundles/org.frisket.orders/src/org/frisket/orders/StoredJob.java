package org.frisket.orders;

import org.frisket.model.Job;

/**
 * A job taken out of the order book, to be looked at or worked on.
 *
 * @param job   its document; stage and history are those of the order book
 * @param entry as it was when it was taken out
 */
public record StoredJob(Job job, Entry entry) {
}
