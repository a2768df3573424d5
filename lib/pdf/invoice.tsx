import { Page, Text, View } from '@react-pdf/renderer';
import type { InvoiceDocument } from '@/lib/documents';
import { familyOf } from './fonts';
import { InvoiceGoes } from './invoice-goes';
import { InvoiceHead } from './invoice-head';
import { type InvoiceJob, PAGE_SIZES } from './job';
import { BARK, GREY, INK, grow } from './styles';
import { Words } from './words';

const BODY = 11;
const SMALL = 9.5;
const OWNER_NOTICE = 'NOT FOR SALE. Processed for the owner of the game.';

/** An invoice, or an estimate that says so, on as many pages as its rows need. */
export function InvoicePages({ paper, document, payments, due }: Omit<InvoiceJob, 'kind'>) {
  const [width, height] = PAGE_SIZES[paper];
  return (
    <Page size={[width, height]} style={{ paddingTop: 34, paddingBottom: 46, paddingHorizontal: 50 }}>
      <InvoiceHead document={document} />
      <Rows document={document} payments={payments} due={due} />
      <Packed document={document} />
      <View wrap={false} style={{ marginTop: 10, borderTopWidth: 0.75, borderTopColor: GREY, paddingTop: 8, gap: 4 }}>
        <Words size={SMALL + 1} weight={700}>{OWNER_NOTICE}</Words>
        <Words size={SMALL} leading={1.35}>{document.cautions.join(' ')}</Words>
      </View>
      <Foot document={document} />
    </Page>
  );
}

function Rows({ document, payments, due }: Pick<InvoiceJob, 'document' | 'payments' | 'due'>) {
  return (
    <View style={{ marginTop: 16 }}>
      <View style={{ flexDirection: 'row', borderBottomWidth: 1.5, borderBottomColor: BARK, paddingBottom: 3, gap: 10 }}>
        <Words size={SMALL} weight={700} style={{ flexGrow: 1, flexBasis: 0 }}>What was done</Words>
        <Words size={SMALL} weight={700} style={{ width: 165 }}>Worked out from</Words>
        <Words size={SMALL} weight={700} style={{ width: 84, textAlign: 'right' }}>Amount</Words>
      </View>
      {document.rows.map((row, index) => (
        <View key={`${index} ${row.label}`} wrap={false} style={{ flexDirection: 'row', gap: 10, paddingVertical: 3, borderBottomWidth: 0.5, borderBottomColor: GREY }}>
          <Words size={BODY} style={{ flexGrow: 1, flexBasis: 0 }}>{row.label}</Words>
          <Words size={BODY} style={{ width: 165 }}>{row.basis}</Words>
          <Words size={BODY} style={{ width: 84, textAlign: 'right' }}>{row.amount}</Words>
        </View>
      ))}
      <View wrap={false} style={{ flexDirection: 'row', justifyContent: document.goes ? 'space-between' : 'flex-end', marginTop: 8 }}>
        {document.goes && <InvoiceGoes goes={document.goes} />}
        <View style={{ width: 290 }}>
          {document.taxes.length > 0 && <Sum label="Subtotal" amount={document.subtotal} />}
          {document.taxes.map((tax) => (
            <Sum key={tax.label} label={tax.label} amount={tax.amount} />
          ))}
          <View style={{ borderTopWidth: 1.5, borderTopColor: BARK, marginTop: 3, paddingTop: 2 }}>
            <Sum label={document.isEstimate ? 'Estimated total' : 'Total'} amount={document.total} size={16} weight={700} />
          </View>
          {payments.map((payment, index) => (
            <Sum key={`${index} ${payment.label}`} label={payment.label} amount={payment.amount} />
          ))}
          {due !== '' && (
            <View style={{ borderWidth: 1.25, borderColor: BARK, marginTop: 5, paddingLeft: 6, paddingRight: 6, marginLeft: -7, marginRight: 0 }}>
              <Sum label="To pay" amount={due} size={14} weight={700} />
            </View>
          )}
        </View>
      </View>
    </View>
  );
}

function Sum({ label, amount, size = BODY, weight = 400 }: { readonly label: string; readonly amount: string; readonly size?: number; readonly weight?: 400 | 700 }) {
  return (
    <View style={{ flexDirection: 'row', gap: 10, paddingVertical: 2 }}>
      <Words size={size} weight={weight} style={grow}>{label}</Words>
      <Words size={size} weight={weight} style={{ textAlign: 'right' }}>{amount}</Words>
    </View>
  );
}

function Packed({ document }: { readonly document: InvoiceDocument }) {
  if (document.packed.length === 0 && document.yieldLine === '') return null;
  return (
    <View style={{ marginTop: 12 }}>
      {document.packed.length > 0 && (
        <View wrap={false} style={{ flexDirection: 'row', borderBottomWidth: 1.5, borderBottomColor: BARK, paddingBottom: 3, gap: 10 }}>
          <Words size={SMALL} weight={700} style={{ flexGrow: 1, flexBasis: 0 }}>What was packed</Words>
          <Words size={SMALL} weight={700} style={{ width: 84, textAlign: 'right' }}>Packages</Words>
          <Words size={SMALL} weight={700} style={{ width: 84, textAlign: 'right' }}>Weight</Words>
        </View>
      )}
      {document.packed.map((row, index) => (
        <View key={`${index} ${row.label}`} wrap={false} style={{ flexDirection: 'row', gap: 10, paddingVertical: 2.5, borderBottomWidth: 0.5, borderBottomColor: GREY }}>
          <Words size={BODY - 0.5} style={{ flexGrow: 1, flexBasis: 0 }}>{row.label}</Words>
          <Words size={BODY - 0.5} style={{ width: 84, textAlign: 'right' }}>{row.packages}</Words>
          <Words size={BODY - 0.5} style={{ width: 84, textAlign: 'right' }}>{row.weight}</Words>
        </View>
      ))}
      {document.yieldLine !== '' && (
        <View wrap={false} style={{ marginTop: 6 }}>
          <Words size={SMALL + 0.5} leading={1.3}>{document.yieldLine}</Words>
        </View>
      )}
    </View>
  );
}

function Foot({ document }: { readonly document: InvoiceDocument }) {
  const words = `${document.shop.name} · ${document.title} · ${document.order}`;
  return (
    <View fixed style={{ position: 'absolute', left: 50, right: 50, bottom: 30, flexDirection: 'row', justifyContent: 'space-between' }}>
      <Words size={9} lines={1} style={{ maxWidth: 420 }}>{words}</Words>
      <Text
        style={{ fontFamily: familyOf(''), fontSize: 9, color: INK }}
        render={({ pageNumber, totalPages }) => (totalPages > 1 ? `${pageNumber} of ${totalPages}` : '')}
      />
    </View>
  );
}
