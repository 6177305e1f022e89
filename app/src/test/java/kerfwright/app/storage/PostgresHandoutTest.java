package kerfwright.app.storage;

class PostgresHandoutTest extends HandoutContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
