package org.frisket.ui.orders.internal.customers;

import java.io.IOException;
import java.util.List;

import org.frisket.orders.OrderException;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.customers.Merger;
import org.frisket.ui.orders.internal.OrderDesk;

/** A change of the studio's customers that can be taken back. Made and taken back off the UI thread. */
public interface CustomerStep {

	void make(Customers all) throws IOException, OrderException;

	void takeBack(Customers all) throws IOException, OrderException;

	/** Who is to be looked at afterwards; empty for nobody. */
	String id();

	/** The texts of one with the revision of another. */
	private static Customer at(Customer texts, Customer known) {
		return new Customer(known.id(), known.revision(), texts.name(), texts.contact(), texts.mail(), texts.phone(),
				texts.address(), texts.agreement(), texts.notes(), known.changed());
	}

	/** Somebody new. */
	static CustomerStep add(Customer wanted) {
		return new CustomerStep() {

			private Customer kept = wanted;

			@Override
			public void make(Customers all) throws IOException, OrderException {
				kept = all.add(wanted);
			}

			@Override
			public void takeBack(Customers all) throws IOException, OrderException {
				all.remove(kept);
			}

			@Override
			public String id() {
				return kept.id();
			}
		};
	}

	/** @param before as it was looked up @param texts that it is to have */
	static CustomerStep change(Customer before, Customer texts) {
		return new CustomerStep() {

			private Customer kept = before;

			@Override
			public void make(Customers all) throws IOException, OrderException {
				kept = all.change(at(texts, kept), OrderDesk.person());
			}

			@Override
			public void takeBack(Customers all) throws IOException, OrderException {
				kept = all.change(at(before, kept), OrderDesk.person());
			}

			@Override
			public String id() {
				return before.id();
			}
		};
	}

	/** One of two. */
	static CustomerStep merge(Customer first, Customer second) {
		return new CustomerStep() {

			private Customer from = first;
			private Customer into = second;
			private Merger merger;

			@Override
			public void make(Customers all) throws IOException, OrderException {
				merger = all.unite(from, into, OrderDesk.person());
			}

			@Override
			public void takeBack(Customers all) throws IOException, OrderException {
				List<Customer> both = all.part(merger, OrderDesk.person());
				from = both.get(0);
				into = both.get(1);
			}

			@Override
			public String id() {
				return second.id();
			}
		};
	}
}
