-- CreateTable
CREATE TABLE "Shop" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT DEFAULT 1,
    "name" TEXT NOT NULL,
    "settings" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Counter" (
    "name" TEXT NOT NULL PRIMARY KEY,
    "value" INTEGER NOT NULL
);

-- CreateTable
CREATE TABLE "TariffVersion" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "tariff" JSONB NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "createdBy" TEXT NOT NULL
);

-- CreateTable
CREATE TABLE "Order" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "number" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "speciesId" TEXT NOT NULL,
    "hunterName" TEXT NOT NULL,
    "hunterPhone" TEXT NOT NULL,
    "hunterEmail" TEXT NOT NULL DEFAULT '',
    "searchKey" TEXT NOT NULL,
    "animal" JSONB NOT NULL,
    "linkHash" TEXT NOT NULL,
    "linkExpiresAt" DATETIME NOT NULL,
    "formKey" TEXT NOT NULL,
    "formDigest" TEXT NOT NULL,
    "tariffId" INTEGER NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "readyAt" DATETIME,
    CONSTRAINT "Order_tariffId_fkey" FOREIGN KEY ("tariffId") REFERENCES "TariffVersion" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "InstructionVersion" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "orderId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "instructions" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "createdBy" TEXT NOT NULL,
    CONSTRAINT "InstructionVersion_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Arrival" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "orderId" TEXT NOT NULL,
    "details" JSONB NOT NULL,
    "hangingGrams" INTEGER,
    "receivedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "receivedBy" TEXT NOT NULL,
    CONSTRAINT "Arrival_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Question" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "orderId" TEXT NOT NULL,
    "findingKey" TEXT NOT NULL,
    "ruleId" TEXT NOT NULL,
    "message" TEXT NOT NULL,
    "options" JSONB NOT NULL,
    "askedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "answeredAt" DATETIME,
    "answer" TEXT,
    "withdrawnAt" DATETIME,
    CONSTRAINT "Question_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "PackedLine" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "orderId" TEXT NOT NULL,
    "lineKey" TEXT NOT NULL,
    "grams" INTEGER NOT NULL,
    "packages" INTEGER NOT NULL,
    "packedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "packedBy" TEXT NOT NULL,
    CONSTRAINT "PackedLine_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Invoice" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "series" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "orderId" TEXT NOT NULL,
    "document" JSONB NOT NULL,
    "currency" TEXT NOT NULL,
    "totalMinor" INTEGER NOT NULL,
    "issuedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "issuedBy" TEXT NOT NULL,
    CONSTRAINT "Invoice_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "InvoiceLine" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "invoiceId" INTEGER NOT NULL,
    "position" INTEGER NOT NULL,
    "label" TEXT NOT NULL,
    "amountMinor" INTEGER NOT NULL,
    CONSTRAINT "InvoiceLine_invoiceId_fkey" FOREIGN KEY ("invoiceId") REFERENCES "Invoice" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Payment" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "invoiceId" INTEGER NOT NULL,
    "amountMinor" INTEGER NOT NULL,
    "method" TEXT NOT NULL,
    "formKey" TEXT NOT NULL,
    "paidAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "takenBy" TEXT NOT NULL,
    CONSTRAINT "Payment_invoiceId_fkey" FOREIGN KEY ("invoiceId") REFERENCES "Invoice" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Handover" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "orderId" TEXT NOT NULL,
    "collectedBy" TEXT NOT NULL,
    "address" TEXT NOT NULL DEFAULT '',
    "tagReturned" BOOLEAN NOT NULL,
    "boxes" INTEGER NOT NULL,
    "handedOverAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "handedOverBy" TEXT NOT NULL,
    CONSTRAINT "Handover_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AuditEntry" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "actorKind" TEXT NOT NULL,
    "actorId" TEXT NOT NULL,
    "actorName" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "orderId" TEXT,
    "before" JSONB,
    "after" JSONB,
    CONSTRAINT "AuditEntry_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SignInThrottle" (
    "key" TEXT NOT NULL PRIMARY KEY,
    "failures" INTEGER NOT NULL,
    "blockedUntil" DATETIME,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "StaffMember" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "username" TEXT,
    "displayUsername" TEXT,
    "role" TEXT NOT NULL DEFAULT 'cutter',
    "disabledAt" DATETIME,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "StaffSession" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "expiresAt" DATETIME NOT NULL,
    "token" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "userId" TEXT NOT NULL,
    CONSTRAINT "StaffSession_userId_fkey" FOREIGN KEY ("userId") REFERENCES "StaffMember" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StaffAccount" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" DATETIME,
    "refreshTokenExpiresAt" DATETIME,
    "scope" TEXT,
    "password" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "StaffAccount_userId_fkey" FOREIGN KEY ("userId") REFERENCES "StaffMember" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StaffVerification" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateIndex
CREATE INDEX "Order_state_createdAt_idx" ON "Order"("state", "createdAt");

-- CreateIndex
CREATE INDEX "Order_createdAt_idx" ON "Order"("createdAt");

-- CreateIndex
CREATE UNIQUE INDEX "order_number" ON "Order"("number");

-- CreateIndex
CREATE UNIQUE INDEX "order_link" ON "Order"("linkHash");

-- CreateIndex
CREATE UNIQUE INDEX "order_form_key" ON "Order"("formKey");

-- CreateIndex
CREATE UNIQUE INDEX "instruction_version" ON "InstructionVersion"("orderId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "arrival_order" ON "Arrival"("orderId");

-- CreateIndex
CREATE INDEX "Question_orderId_answeredAt_idx" ON "Question"("orderId", "answeredAt");

-- CreateIndex
CREATE UNIQUE INDEX "packed_line" ON "PackedLine"("orderId", "lineKey");

-- CreateIndex
CREATE UNIQUE INDEX "invoice_order" ON "Invoice"("orderId");

-- CreateIndex
CREATE UNIQUE INDEX "invoice_number" ON "Invoice"("series", "number");

-- CreateIndex
CREATE UNIQUE INDEX "invoice_line_position" ON "InvoiceLine"("invoiceId", "position");

-- CreateIndex
CREATE UNIQUE INDEX "payment_form_key" ON "Payment"("formKey");

-- CreateIndex
CREATE UNIQUE INDEX "handover_order" ON "Handover"("orderId");

-- CreateIndex
CREATE INDEX "AuditEntry_orderId_id_idx" ON "AuditEntry"("orderId", "id");

-- CreateIndex
CREATE INDEX "AuditEntry_at_idx" ON "AuditEntry"("at");

-- CreateIndex
CREATE UNIQUE INDEX "staff_email" ON "StaffMember"("email");

-- CreateIndex
CREATE UNIQUE INDEX "staff_username" ON "StaffMember"("username");

-- CreateIndex
CREATE INDEX "StaffSession_userId_idx" ON "StaffSession"("userId");

-- CreateIndex
CREATE UNIQUE INDEX "staff_session_token" ON "StaffSession"("token");

-- CreateIndex
CREATE INDEX "StaffAccount_userId_idx" ON "StaffAccount"("userId");

-- CreateIndex
CREATE INDEX "StaffVerification_identifier_idx" ON "StaffVerification"("identifier");

-- What was issued, received or recorded stays as it was: a mistake is mended by a further row.
CREATE TRIGGER "invoice_not_changed" BEFORE UPDATE ON "Invoice" BEGIN SELECT RAISE(ABORT, 'an issued invoice is never changed'); END;
CREATE TRIGGER "invoice_not_removed" BEFORE DELETE ON "Invoice" BEGIN SELECT RAISE(ABORT, 'an issued invoice is never removed'); END;
CREATE TRIGGER "invoice_line_not_changed" BEFORE UPDATE ON "InvoiceLine" BEGIN SELECT RAISE(ABORT, 'a line of an issued invoice is never changed'); END;
CREATE TRIGGER "invoice_line_not_removed" BEFORE DELETE ON "InvoiceLine" BEGIN SELECT RAISE(ABORT, 'a line of an issued invoice is never removed'); END;
CREATE TRIGGER "payment_not_changed" BEFORE UPDATE ON "Payment" BEGIN SELECT RAISE(ABORT, 'a payment is never changed'); END;
CREATE TRIGGER "payment_not_removed" BEFORE DELETE ON "Payment" BEGIN SELECT RAISE(ABORT, 'a payment is never removed'); END;
CREATE TRIGGER "audit_entry_not_changed" BEFORE UPDATE ON "AuditEntry" BEGIN SELECT RAISE(ABORT, 'the audit trail is never changed'); END;
CREATE TRIGGER "audit_entry_not_removed" BEFORE DELETE ON "AuditEntry" BEGIN SELECT RAISE(ABORT, 'the audit trail is never removed'); END;
