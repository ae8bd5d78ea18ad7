import type { ButtonHTMLAttributes } from 'react';

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly look?: 'primary' | 'plain';
  readonly small?: boolean;
}

/** A button; `title` says more than its words, such as what Undo would undo. */
export function Button({ look, small = false, className = '', type = 'button', ...rest }: ButtonProps) {
  const names = ['button', look, small ? 'small' : '', className].filter(Boolean).join(' ');
  return <button type={type} className={names} {...rest} />;
}
