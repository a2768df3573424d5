-- CreateTable
CREATE TABLE "YieldRecord" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "orderId" TEXT NOT NULL,
    "speciesId" TEXT NOT NULL,
    "told" JSONB NOT NULL,
    "verdict" TEXT NOT NULL,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "judgedBy" TEXT,
    CONSTRAINT "YieldRecord_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "Order" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SpeciesLearning" (
    "speciesId" TEXT NOT NULL PRIMARY KEY,
    "isOn" BOOLEAN NOT NULL DEFAULT true,
    "since" DATETIME
);

-- CreateIndex
CREATE UNIQUE INDEX "yield_record_order" ON "YieldRecord"("orderId");

-- CreateIndex
CREATE INDEX "YieldRecord_speciesId_verdict_id_idx" ON "YieldRecord"("speciesId", "verdict", "id");

-- CreateIndex
CREATE INDEX "YieldRecord_verdict_idx" ON "YieldRecord"("verdict");
