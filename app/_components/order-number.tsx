type OrderNumberProps = {
  readonly number: string;
  readonly big?: boolean;
  /** Said before the number by a screen reader. */
  readonly label?: string;
};

/** The animal's number, drawn as its hanging tag. */
export function OrderNumber({ number, big = false, label = 'Number' }: OrderNumberProps) {
  return (
    <span className={big ? 'order-number big' : 'order-number'}>
      <span className="visually-hidden">{label} </span>
      {number}
    </span>
  );
}
