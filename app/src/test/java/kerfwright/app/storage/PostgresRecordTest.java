package kerfwright.app.storage;

class PostgresRecordTest extends RecordContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
