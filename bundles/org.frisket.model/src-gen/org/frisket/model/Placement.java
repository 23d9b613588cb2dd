/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One copy of a part on a sheet.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Placement#getJob <em>Job</em>}</li>
 *   <li>{@link org.frisket.model.Placement#getPart <em>Part</em>}</li>
 *   <li>{@link org.frisket.model.Placement#getCopy <em>Copy</em>}</li>
 *   <li>{@link org.frisket.model.Placement#getX <em>X</em>}</li>
 *   <li>{@link org.frisket.model.Placement#getY <em>Y</em>}</li>
 *   <li>{@link org.frisket.model.Placement#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.frisket.model.Placement#isPinned <em>Pinned</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Placement extends EObject {
	/**
	 * Returns the value of the '<em><b>Job</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the guest whose part it is; null for a part of this job.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Job</em>' attribute.
	 * @see #setJob(String)
	 * @generated
	 */
	String getJob();

	/**
	 * Sets the value of the '{@link org.frisket.model.Placement#getJob <em>Job</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Job</em>' attribute.
	 * @see #getJob()
	 * @generated
	 */
	void setJob(String value);

	/**
	 * Returns the value of the '<em><b>Part</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The key of the part: the id of the element it is made of, with # and a number for a single piece of it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Part</em>' attribute.
	 * @see #setPart(String)
	 * @generated
	 */
	String getPart();

	/**
	 * Sets the value of the '{@link org.frisket.model.Placement#getPart <em>Part</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Part</em>' attribute.
	 * @see #getPart()
	 * @generated
	 */
	void setPart(String value);

	/**
	 * Returns the value of the '<em><b>Copy</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which of the copies of the part it is, from 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Copy</em>' attribute.
	 * @see #setCopy(int)
	 * @generated
	 */
	int getCopy();

	/**
	 * Sets the value of the '{@link org.frisket.model.Placement#getCopy <em>Copy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Copy</em>' attribute.
	 * @see #getCopy()
	 * @generated
	 */
	void setCopy(int value);

	/**
	 * Returns the value of the '<em><b>X</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the centre of the part's bounds lies, in mm from the left edge of the sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>X</em>' attribute.
	 * @see #setX(double)
	 * @generated
	 */
	double getX();

	/**
	 * Sets the value of the '{@link org.frisket.model.Placement#getX <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X</em>' attribute.
	 * @see #getX()
	 * @generated
	 */
	void setX(double value);

	/**
	 * Returns the value of the '<em><b>Y</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The same from the upper edge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Y</em>' attribute.
	 * @see #setY(double)
	 * @generated
	 */
	double getY();

	/**
	 * Sets the value of the '{@link org.frisket.model.Placement#getY <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y</em>' attribute.
	 * @see #getY()
	 * @generated
	 */
	void setY(double value);

	/**
	 * Returns the value of the '<em><b>Turn</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By how much the part is turned about that centre, in degrees, clockwise as seen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Turn</em>' attribute.
	 * @see #setTurn(double)
	 * @generated
	 */
	double getTurn();

	/**
	 * Sets the value of the '{@link org.frisket.model.Placement#getTurn <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turn</em>' attribute.
	 * @see #getTurn()
	 * @generated
	 */
	void setTurn(double value);

	/**
	 * Returns the value of the '<em><b>Pinned</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it stays where it is when parts are laid again.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pinned</em>' attribute.
	 * @see #setPinned(boolean)
	 * @generated
	 */
	boolean isPinned();

	/**
	 * Sets the value of the '{@link org.frisket.model.Placement#isPinned <em>Pinned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pinned</em>' attribute.
	 * @see #isPinned()
	 * @generated
	 */
	void setPinned(boolean value);

} // Placement
