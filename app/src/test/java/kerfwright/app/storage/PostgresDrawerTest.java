package kerfwright.app.storage;

class PostgresDrawerTest extends DrawerContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
