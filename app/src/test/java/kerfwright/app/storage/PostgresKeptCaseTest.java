package kerfwright.app.storage;

class PostgresKeptCaseTest extends KeptCaseContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
