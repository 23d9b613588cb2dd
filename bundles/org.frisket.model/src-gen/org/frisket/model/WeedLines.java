/**
 */
package org.frisket.model;

import java.util.List;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Weed Lines</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Lines in the waste around and between elements, so that it comes off easily. It holds no geometry of its own.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.WeedLines#getAround <em>Around</em>}</li>
 *   <li>{@link org.frisket.model.WeedLines#getMargin <em>Margin</em>}</li>
 *   <li>{@link org.frisket.model.WeedLines#isBetween <em>Between</em>}</li>
 *   <li>{@link org.frisket.model.WeedLines#getSpacing <em>Spacing</em>}</li>
 *   <li>{@link org.frisket.model.WeedLines#getClearance <em>Clearance</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface WeedLines extends Element {
	/**
	 * Returns the value of the '<em><b>Around</b></em>' reference list.
	 * The list contents are of type {@link org.frisket.model.Element}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The elements it keeps off; their order has no meaning.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Around</em>' reference list.
	 * @generated
	 */
	List<Element> getAround();

	/**
	 * Returns the value of the '<em><b>Margin</b></em>' attribute.
	 * The default value is <code>"5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the box around them, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Margin</em>' attribute.
	 * @see #setMargin(double)
	 * @generated
	 */
	double getMargin();

	/**
	 * Sets the value of the '{@link org.frisket.model.WeedLines#getMargin <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin</em>' attribute.
	 * @see #getMargin()
	 * @generated
	 */
	void setMargin(double value);

	/**
	 * Returns the value of the '<em><b>Between</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether lines run from edge to edge between parts, wherever there is a straight gap.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Between</em>' attribute.
	 * @see #setBetween(boolean)
	 * @generated
	 */
	boolean isBetween();

	/**
	 * Sets the value of the '{@link org.frisket.model.WeedLines#isBetween <em>Between</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Between</em>' attribute.
	 * @see #isBetween()
	 * @generated
	 */
	void setBetween(boolean value);

	/**
	 * Returns the value of the '<em><b>Spacing</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The widest strip in mm that the waste is parted into; 0 for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spacing</em>' attribute.
	 * @see #setSpacing(double)
	 * @generated
	 */
	double getSpacing();

	/**
	 * Sets the value of the '{@link org.frisket.model.WeedLines#getSpacing <em>Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spacing</em>' attribute.
	 * @see #getSpacing()
	 * @generated
	 */
	void setSpacing(double value);

	/**
	 * Returns the value of the '<em><b>Clearance</b></em>' attribute.
	 * The default value is <code>"0.5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far all lines keep from the parts, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Clearance</em>' attribute.
	 * @see #setClearance(double)
	 * @generated
	 */
	double getClearance();

	/**
	 * Sets the value of the '{@link org.frisket.model.WeedLines#getClearance <em>Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clearance</em>' attribute.
	 * @see #getClearance()
	 * @generated
	 */
	void setClearance(double value);

} // WeedLines
