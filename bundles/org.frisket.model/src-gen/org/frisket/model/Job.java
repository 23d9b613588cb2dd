/**
 */
package org.frisket.model;

import java.time.LocalDate;

import java.util.List;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Job</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One order, from enquiry to delivery: who wants what by when, the layers it is made of and where it stands.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Job#getId <em>Id</em>}</li>
 *   <li>{@link org.frisket.model.Job#getNumber <em>Number</em>}</li>
 *   <li>{@link org.frisket.model.Job#getTitle <em>Title</em>}</li>
 *   <li>{@link org.frisket.model.Job#getCustomer <em>Customer</em>}</li>
 *   <li>{@link org.frisket.model.Job#getDue <em>Due</em>}</li>
 *   <li>{@link org.frisket.model.Job#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.frisket.model.Job#getStage <em>Stage</em>}</li>
 *   <li>{@link org.frisket.model.Job#getNotes <em>Notes</em>}</li>
 *   <li>{@link org.frisket.model.Job#getLayers <em>Layers</em>}</li>
 *   <li>{@link org.frisket.model.Job#getHistory <em>History</em>}</li>
 *   <li>{@link org.frisket.model.Job#getGroups <em>Groups</em>}</li>
 *   <li>{@link org.frisket.model.Job#getGuides <em>Guides</em>}</li>
 *   <li>{@link org.frisket.model.Job#getSheets <em>Sheets</em>}</li>
 *   <li>{@link org.frisket.model.Job#getGuests <em>Guests</em>}</li>
 *   <li>{@link org.frisket.model.Job#getLaying <em>Laying</em>}</li>
 *   <li>{@link org.frisket.model.Job#getRepeats <em>Repeats</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Job extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tells this job from every other; never shown.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The number on the docket, as the studio writes it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(String)
	 * @generated
	 */
	String getNumber();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the job is called in the order book.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Customer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whom it is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Customer</em>' attribute.
	 * @see #setCustomer(String)
	 * @generated
	 */
	String getCustomer();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getCustomer <em>Customer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Customer</em>' attribute.
	 * @see #getCustomer()
	 * @generated
	 */
	void setCustomer(String value);

	/**
	 * Returns the value of the '<em><b>Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The day it must be ready; null if none is agreed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Due</em>' attribute.
	 * @see #setDue(LocalDate)
	 * @generated
	 */
	LocalDate getDue();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getDue <em>Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Due</em>' attribute.
	 * @see #getDue()
	 * @generated
	 */
	void setDue(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many finished copies are wanted.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(int)
	 * @generated
	 */
	int getQuantity();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(int value);

	/**
	 * Returns the value of the '<em><b>Stage</b></em>' attribute.
	 * The default value is <code>"enquiry"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.Stage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the job stands.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stage</em>' attribute.
	 * @see org.frisket.model.Stage
	 * @see #setStage(Stage)
	 * @generated
	 */
	Stage getStage();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getStage <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stage</em>' attribute.
	 * @see org.frisket.model.Stage
	 * @see #getStage()
	 * @generated
	 */
	void setStage(Stage value);

	/**
	 * Returns the value of the '<em><b>Notes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Free remarks.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Notes</em>' attribute.
	 * @see #setNotes(String)
	 * @generated
	 */
	String getNotes();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getNotes <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Notes</em>' attribute.
	 * @see #getNotes()
	 * @generated
	 */
	void setNotes(String value);

	/**
	 * Returns the value of the '<em><b>Layers</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Layer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The layers, the lowest first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Layers</em>' containment reference list.
	 * @generated
	 */
	List<Layer> getLayers();

	/**
	 * Returns the value of the '<em><b>History</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.StageChange}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Changes of stage, the oldest first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>History</em>' containment reference list.
	 * @generated
	 */
	List<StageChange> getHistory();

	/**
	 * Returns the value of the '<em><b>Groups</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Group}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Elements that are taken together, however they are layered.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Groups</em>' containment reference list.
	 * @generated
	 */
	List<Group> getGroups();

	/**
	 * Returns the value of the '<em><b>Guides</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Guide}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lines that help to lay things out; never worked by a machine.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Guides</em>' containment reference list.
	 * @generated
	 */
	List<Guide> getGuides();

	/**
	 * Returns the value of the '<em><b>Sheets</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Sheet}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sheets with parts laid on them, in the order in which they are worked.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sheets</em>' containment reference list.
	 * @generated
	 */
	List<Sheet> getSheets();

	/**
	 * Returns the value of the '<em><b>Guests</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Guest}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Other jobs whose parts lie on these sheets too.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Guests</em>' containment reference list.
	 * @generated
	 */
	List<Guest> getGuests();

	/**
	 * Returns the value of the '<em><b>Laying</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How parts were laid on sheets last, so that it can be done again; null before the first time.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Laying</em>' containment reference.
	 * @see #setLaying(Laying)
	 * @generated
	 */
	Laying getLaying();

	/**
	 * Sets the value of the '{@link org.frisket.model.Job#getLaying <em>Laying</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Laying</em>' containment reference.
	 * @see #getLaying()
	 * @generated
	 */
	void setLaying(Laying value);

	/**
	 * Returns the value of the '<em><b>Repeats</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The ids of the jobs it is a repeat of, the latest first: what worked for them works for it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Repeats</em>' attribute list.
	 * @generated
	 */
	List<String> getRepeats();

} // Job
