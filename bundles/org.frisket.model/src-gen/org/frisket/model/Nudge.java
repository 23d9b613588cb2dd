/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Nudge</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A letter moved, turned or scaled about its middle by hand.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Nudge#getIndex <em>Index</em>}</li>
 *   <li>{@link org.frisket.model.Nudge#getDx <em>Dx</em>}</li>
 *   <li>{@link org.frisket.model.Nudge#getDy <em>Dy</em>}</li>
 *   <li>{@link org.frisket.model.Nudge#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.frisket.model.Nudge#getScale <em>Scale</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Nudge extends EObject {
	/**
	 * Returns the value of the '<em><b>Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Index of a character of the letter (UTF-16).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Index</em>' attribute.
	 * @see #setIndex(int)
	 * @generated
	 */
	int getIndex();

	/**
	 * Sets the value of the '{@link org.frisket.model.Nudge#getIndex <em>Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Index</em>' attribute.
	 * @see #getIndex()
	 * @generated
	 */
	void setIndex(int value);

	/**
	 * Returns the value of the '<em><b>Dx</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * To the right in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dx</em>' attribute.
	 * @see #setDx(double)
	 * @generated
	 */
	double getDx();

	/**
	 * Sets the value of the '{@link org.frisket.model.Nudge#getDx <em>Dx</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dx</em>' attribute.
	 * @see #getDx()
	 * @generated
	 */
	void setDx(double value);

	/**
	 * Returns the value of the '<em><b>Dy</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Down in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dy</em>' attribute.
	 * @see #setDy(double)
	 * @generated
	 */
	double getDy();

	/**
	 * Sets the value of the '{@link org.frisket.model.Nudge#getDy <em>Dy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dy</em>' attribute.
	 * @see #getDy()
	 * @generated
	 */
	void setDy(double value);

	/**
	 * Returns the value of the '<em><b>Turn</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In degrees, clockwise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Turn</em>' attribute.
	 * @see #setTurn(double)
	 * @generated
	 */
	double getTurn();

	/**
	 * Sets the value of the '{@link org.frisket.model.Nudge#getTurn <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turn</em>' attribute.
	 * @see #getTurn()
	 * @generated
	 */
	void setTurn(double value);

	/**
	 * Returns the value of the '<em><b>Scale</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many times as large.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scale</em>' attribute.
	 * @see #setScale(double)
	 * @generated
	 */
	double getScale();

	/**
	 * Sets the value of the '{@link org.frisket.model.Nudge#getScale <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scale</em>' attribute.
	 * @see #getScale()
	 * @generated
	 */
	void setScale(double value);

} // Nudge
