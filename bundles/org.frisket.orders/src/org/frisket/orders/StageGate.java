package org.frisket.orders;

import java.io.IOException;

/** May refuse that a job goes to another stage. */
@FunctionalInterface
public interface StageGate {

	/** @throws OrderException if it must not go there; the message says why */
	void pass(StageStep step) throws IOException, OrderException;
}
